import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createTrailingMean } from '../../src/measures/trailing-mean.ts';

test('the mean of as many values as there are, then of the latest', () => {
  const mean = createTrailingMean(3, 2);
  expect([3, 5, 10, 0, 2].map((value) => mean.add(1, value))).toEqual([3, 4, 6, 5, 4]);
  expect(mean.full(1)).toBe(true);
  expect(mean.full(0)).toBe(false);
});

test('agrees with adding up afresh, whatever comes', () => {
  const values = fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), { minLength: 1 });
  fc.assert(
    fc.property(values, fc.integer({ min: 1, max: 30 }), (list, length) => {
      const mean = createTrailingMean(length, 1);
      list.forEach((value, k) => {
        const last = list.slice(Math.max(0, k + 1 - length), k + 1);
        const plain = last.reduce((sum, v) => sum + v, 0) / last.length;
        expect(Math.abs(mean.add(0, value) - plain)).toBeLessThan(1e-9);
      });
    }),
  );
});
