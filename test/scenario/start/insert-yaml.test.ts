import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { type Addition, adding } from '../../../src/scenario/start/add-questions.ts';
import { type Insertion, insertInto } from '../../../src/scenario/start/insert-yaml.ts';
import { completed } from '../../../src/scenario/start/question.ts';
import { readOnce } from '../read-once.ts';

/** The piece that one text has and the other has not, where nothing else differs. */
function piece(before: string, after: string): string {
  let head = 0;
  while (head < before.length && before[head] === after[head]) head++;
  const tail = before.length - head;
  expect(after.slice(after.length - tail)).toBe(before.slice(head));
  return after.slice(head, after.length - tail);
}

const into = (path: string, name: string | null, value: unknown): Insertion => ({
  ...{ path: path.split('.'), name, value },
});

describe('insertInto', () => {
  test.each<[string, string, Insertion, string]>([
    [
      'a block',
      'a:\n  b: 1 # one\n\n# end\n',
      into('a', 'c', 2),
      'a:\n  b: 1 # one\n  c: 2\n\n# end\n',
    ],
    [
      'a block without a last line break',
      'a:\n    b: 1',
      into('a', 'c', 2),
      'a:\n    b: 1\n    c: 2',
    ],
    [
      'a nested last item',
      'a:\n  b:\n    d: [1,\n      2] # x\nz: 1\n',
      into('a', 'c', 2),
      'a:\n  b:\n    d: [1,\n      2] # x\n  c: 2\nz: 1\n',
    ],
    [
      'a text of several lines',
      'a:\n  b: |\n    x\n    y\nz: 1\n',
      into('a', 'c', 2),
      'a:\n  b: |\n    x\n    y\n  c: 2\nz: 1\n',
    ],
    ['braces', 'a: { b: 1 } # x\n', into('a', 'c', 2), 'a: { b: 1, c: 2 } # x\n'],
    [
      'braces with a last comma',
      'a: {\n  b: 1,\n}\n',
      into('a', 'c', 2),
      'a: {\n  b: 1, c: 2\n}\n',
    ],
    ['empty braces', 'a: {}\n', into('a', 'c', 2), 'a: { c: 2 }\n'],
    ['a list', 'a:\n- x # 1\n# end\n', into('a', null, 'y'), 'a:\n- x # 1\n- y\n# end\n'],
    ['a list further in', 'a:\n  - { b: 1 }\n', into('a', null, 'y'), 'a:\n  - { b: 1 }\n  - y\n'],
    ['brackets', 'a: [x]\n', into('a', null, 'y'), 'a: [x, y]\n'],
    [
      'a key with nothing behind it',
      'a: # none yet\nz: 1\n',
      into('a', 'c', 2),
      'a: # none yet\n  c: 2\nz: 1\n',
    ],
    ['a section that is not there', 'z: 1', into('a', 'c', 2), 'z: 1\n\na:\n  c: 2\n'],
    [
      'line breaks of another system',
      'a:\r\n  b: 1\r\nz: 1\r\n',
      into('a', 'c', 2),
      'a:\r\n  b: 1\r\n  c: 2\r\nz: 1\r\n',
    ],
    ['names in quotes', 'a:\n  b: 1\n', into('a', 'c: d', '# e'), 'a:\n  b: 1\n  "c: d": "# e"\n'],
  ])('%s', (_, before, insertion, after) => {
    expect(insertInto(before, 'a.yaml', insertion)).toBe(after);
    expect(() => parse(after)).not.toThrow();
  });

  test('what is not written out there is refused with its place', () => {
    expect(() => insertInto('b: &x { c: 1 }\na: *x\n', 'a.yaml', into('a', 'c', 2))).toThrow(
      /^a\.yaml:\d:\d: a: expected a mapping or list that is written out, to add to, got an alias$/,
    );
    expect(() => insertInto('a: 5\n', 'a.yaml', into('a', 'c', 2))).toThrow('got something else');
    expect(() => insertInto('a: {}\n', 'a.yaml', into('a.b', 'c', 2))).toThrow('got nothing');
  });
});

const HOMES = ['terrace', 'flat', 'stove-cottage'];
const WHAT: readonly Addition[] = ['room', 'device', 'rule', 'plan'];

test.each(HOMES.flatMap((home) => WHAT.map((what) => [home, what] as const)))(
  '%s: one more %s, and every other byte as it was',
  (home, what) => {
    const file = `scenarios/${home}.yaml`;
    const before = readFileSync(file, 'utf8');
    const { questions, insertions } = adding(what, readOnce(before, file).yaml.value);
    const { answers } = completed(questions, {}, { weather: [] });
    let text = before;
    for (const insertion of insertions(answers)) {
      const after = insertInto(text, file, insertion);
      expect(piece(text, after).length).toBeGreaterThan(5);
      text = after;
    }
    const { plans } = readOnce(text, file);
    const more = what === 'plan' ? 1 : 0;
    expect(plans).toHaveLength(readOnce(before, file).plans.length + more);
  },
);

test.each(WHAT)('one more %s in the least scenario', (what) => {
  const least = 'title: A\nweather: w.csv\nhome: { rooms: { living: { floor area: 18 } } }\n';
  const { questions, insertions } = adding(what, readOnce(least, 'a.yaml').yaml.value);
  const { answers } = completed(questions, {}, { weather: [] });
  const added = insertions(answers);
  const text = added.reduce((now, one) => insertInto(now, 'a.yaml', one), least);
  const { plans } = readOnce(text, 'a.yaml');
  expect(text.startsWith(what === 'room' ? 'title: A\n' : least)).toBe(true);
  // A scenario without plans has one, as it is lived in, which stays the first.
  expect(plans[0]!.name).toBe('as-lived');
  expect(plans).toHaveLength(what === 'plan' ? 2 : 1);
});
