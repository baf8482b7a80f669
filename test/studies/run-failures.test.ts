import { expect, test } from 'vitest';
import { ifPossible } from '../../src/studies/run-failures.ts';
import { InputProblems } from '../../src/units/problem.ts';

test('what is no home is null, and a fault of the program is none of that', async () => {
  const failing = (error: Error) => () => Promise.reject(error);
  expect(await ifPossible(() => 7)).toBe(7);
  expect(await ifPossible(failing(new InputProblems([])))).toBeNull();
  await expect(ifPossible(failing(new RangeError('a fault')))).rejects.toThrow('a fault');
});
