import { describe, expect, test } from 'vitest';
import { oddIndent } from '../../../src/scenario/yaml/odd-indent.ts';
import { readingProblems } from '../problems-of.ts';

const RULES = `title: a
rules:
  - name: one
    rooms: all
  - name: two
    rooms: all
`;

describe('a line that stands under no other is told once, with where it may belong', () => {
  test.each([
    ['a list item', RULES.replace('  - name: two', ' - name: two'), 5, '0 or 2', 1, '- name: two'],
    [
      'a key of an item',
      RULES.replace(/ {4}rooms: all\n$/, '   rooms: all\n'),
      6,
      '2 or 4',
      3,
      'rooms: all',
    ],
    [
      'a key too deep',
      'title: a\nheating:\n  source: boiler\n   setpoint: 20\n',
      4,
      '2',
      3,
      'setpoint: 20',
    ],
    [
      'a key behind a list',
      'title: a\nrules:\n  - name: one\n   lamp: two\nstep: 5\n',
      4,
      '2 or 4',
      3,
      'lamp: two',
    ],
  ])('%s', (_, text, line, fitting, spaces, written) => {
    expect(readingProblems(text)).toEqual([
      `h.yaml:${line}:${spaces + 1}: expected ${fitting} spaces before "${written}", as before the line that it belongs beside, got ${spaces}`,
    ]);
  });
});

test.each([
  [
    'lists that stand as far to the left as their key',
    'rules:\n- name: a\n  when: []\n- name: b\nstep: 5\n',
  ],
  ['lists of lists', 'a:\n  - - b: 1\n      c: 2\n    - d\n'],
  ['brackets over several lines', 'a: [\n 1,\n     2 ]\nb: { c: "[" ,\n d: 2 }\n'],
  ['comments and empty lines', 'a:\n  b: 1\n # here\n\n  c: 2 # [ {\n'],
  ['quotes', 'a:\n  b: \'x: [\'\n  c: "y: {"\n'],
])('%s are in order', (_, text) => {
  expect(oddIndent(text)).toBeNull();
});

test('a tab is told as a tab, and what follows from it is not', () => {
  expect(readingProblems('title: a\nhome:\n\trooms: {}\n  build: {}\nsite: {}\n')).toEqual([
    'h.yaml:3:1: expected spaces before the first word of a line, got a tab (YAML forbids tabs there)',
  ]);
});

test('brackets in quotes open nothing, and levels that are left are left', () => {
  const deep = 'heating:\n  source: boiler\n   setpoint: 20\n';
  expect(oddIndent(`title: "a ["\n${deep}`)).toEqual({ line: 4, spaces: 3, fitting: [2] });
  expect(oddIndent('a:\n    b: 1\nc:\n  d: 1\n    e: 2\n')).toEqual({
    ...{ line: 5, spaces: 4, fitting: [2] },
  });
});

test('text in a block may stand as it likes', () => {
  expect(oddIndent('a: |\n    deep\n  less\nb: 1\n')).toBeNull();
});

test('of a mistake far from it the line says nothing, and of many mistakes three are told', () => {
  expect(readingProblems('title: one\n  two\na: 1\nb: 2\nc: 3\nd: "x" y\n')[0]).toMatch(
    /^h\.yaml:6:/,
  );
  const many = Array.from({ length: 9 }, (_, k) => `k${k}: "x" y`).join('\n');
  expect(readingProblems(many)).toHaveLength(3);
});
