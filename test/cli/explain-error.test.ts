import { expect, test } from 'vitest';
import { explainError } from '../../src/cli/explain-error.ts';
import { InputProblems } from '../../src/units/problem.ts';
import { fakeIo } from './fake-io.ts';

/** What is said of so many problems, line by line. */
function saidOf(count: number): string[] {
  const { io, said } = fakeIo();
  const problems = Array.from({ length: count }, (_, k) => ({
    ...{ file: 'h.yaml', line: k + 1, column: 1, where: '', expected: 'less', got: 'more' },
    hint: '',
  }));
  expect(explainError(new InputProblems(problems), io)).toBe(2);
  return said.err.trimEnd().split('\n');
}

test('250 problems are all told', () => {
  const lines = saidOf(250);
  expect(lines).toHaveLength(250);
  expect(lines.at(-1)).toBe('h.yaml:250:1: expected less, got more');
});

test('of more, their number', () => {
  expect(saidOf(251).slice(249)).toEqual([
    'h.yaml:250:1: expected less, got more',
    'and 1 more problem',
  ]);
  const many = saidOf(60_000);
  expect(many).toHaveLength(251);
  expect(many.at(-1)).toBe('and 59750 more problems');
});
