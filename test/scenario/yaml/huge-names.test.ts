import { expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../src/scenario/read-scenario.ts';
import { homeWith, problemsOf, readingProblems } from '../problems-of.ts';

// Texts as large as are read at all (0.5 MB) must be refused at once. On a quiet machine each takes
// well under a second; what grows with the square of the length would take minutes.

const AT_ONCE = 10_000; // ms, for machines that do other things besides
const LONG = 'x'.repeat(400_000);

test('a key 60,000 times', { timeout: AT_ONCE }, () => {
  expect(readingProblems(`title: T\n${'k: 1\n'.repeat(60_000)}`)).toEqual([
    'h.yaml:3:1: expected every key once, got "k", which stands in line 2 already, and 59998 times more further down (keep one of them)',
  ]);
});

test('2,000 keys twice', () => {
  const twice = Array.from({ length: 2000 }, (_, k) => `k${k}: 1\nk${k}: 2\n`).join('');
  const problems = readingProblems(twice);
  expect(problems).toHaveLength(21);
  expect(problems[0]).toContain('"k0", which stands in line 1 already (remove one of the two)');
  expect(problems.at(-1)).toBe('h.yaml: expected no more than these, got 1980 further problems');
});

test('2,000 keys that are lists', () => {
  const problems = readingProblems('[a]: 1\n'.repeat(2000));
  expect(problems).toHaveLength(21);
  expect(problems.at(-1)).toContain('got 1980 further problems');
});

test('2,000 aliases of nothing', () => {
  const problems = readingProblems(`a: [${'*q, '.repeat(2000)}]`);
  expect(problems).toHaveLength(21);
  expect(problems.at(-1)).toContain('got 1980 further problems');
});

test.each([
  ['a key', `${LONG}: 1`, 'expected keys of at most 1024 characters, got a longer one'],
  ['a key marked as such', `? ${LONG}\n: 1`, 'which is not known'],
  ['a time zone', `site: { timezone: ${LONG} }`, 'expected a time zone by its IANA name'],
  ['a use', `home: { rooms: { den: { use: ${LONG} } } }`, 'expected one of: living, kitchen'],
  ['a number', `step: ${'9'.repeat(400_000)}`, 'step: expected'],
  ['a unit', `step: 10 ${LONG}`, 'step: expected'],
  [
    'a room elsewhere',
    `home: { rooms: { den: {} } }\ndevices: { d: { kind: purifier, room: ${LONG} } }`,
    'devices.d.room: expected',
  ],
  ['a plan', `plans:\n  ? ${LONG}\n  : { based on: other, change: {} }`, 'based on: expected'],
])('%s of 400,000 characters', { timeout: AT_ONCE }, (_, text, words) => {
  const problems = readingProblems(text);
  expect(problems.find((problem) => problem.includes(words))).toBeDefined();
  for (const problem of problems) expect(problem.length).toBeLessThan(1500);
});

test.each([
  ['pointer', `/home/rooms/${LONG}=1`, 'expected the name of a room: living'],
  ['key', `/${LONG}=1`, 'which is not known'],
  ['value', `/home/rooms/living/use=${LONG}`, 'expected one of: living, kitchen'],
  ['key of the value, 60,000 times', `/home={${'k: 1, '.repeat(60_000)}}`, 'and 59998 times more'],
])('--set with a huge %s', { timeout: AT_ONCE }, (_, setting, words) => {
  const scenario = readScenario(homeWith(''), 'h.yaml');
  const choice = { plan: null, set: [setting], files: new Map<string, string>() };
  const [problem = '', ...more] = problemsOf(() => preparePlan(scenario, choice));
  expect(problem).toContain(words);
  expect(problem.length).toBeLessThan(2000);
  expect(more).toEqual([]);
});
