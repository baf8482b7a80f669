import { expect, test } from 'vitest';
import { type Problem, problemText } from '../../src/units/problem.ts';

const problem = (more: Partial<Problem> = {}): Problem => ({
  ...{ file: 'h.yaml', line: 3, column: 5, where: 'home.rooms', expected: 'a mapping', got: '7' },
  hint: '',
  ...more,
});

test('says where, what was expected, what came and what may be meant', () => {
  expect(problemText(problem())).toBe('h.yaml:3:5: home.rooms: expected a mapping, got 7');
  expect(problemText(problem({ line: 0, where: '', hint: 'try again' }))).toBe(
    'h.yaml: expected a mapping, got 7 (try again)',
  );
});

test('what may be meant stands before a long list', () => {
  const keys = `one of the keys ${'key, '.repeat(25)}end`;
  expect(problemText(problem({ expected: keys, got: '"ky"', hint: 'did you mean "key"?' }))).toBe(
    `h.yaml:3:5: home.rooms: did you mean "key"? Expected ${keys}, got "ky"`,
  );
  expect(problemText(problem({ expected: keys, got: '"ky"', hint: 'try again' }))).toBe(
    `h.yaml:3:5: home.rooms: expected ${keys}, got "ky" (try again)`,
  );
});

test('a part of thousands of characters is cut in the middle, one of some hundred is not', () => {
  const text = problemText(problem({ where: `home.${'x'.repeat(5000)}.end` }));
  expect(text).toContain('[... 4769 characters ...]'); // 5009 less twice 120
  expect(text).toContain('x.end: expected a mapping');
  expect(text.length).toBeLessThan(400);
  const keys = `one of the keys ${'key, '.repeat(120)}end`;
  expect(problemText(problem({ expected: keys }))).toContain(keys);
});
