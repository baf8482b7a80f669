import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createTrailingMean } from '../../src/measures/trailing-mean.ts';

test('the mean of as many values as there are, then of the latest', () => {
  const mean = createTrailingMean(3);
  expect([3, 5, 10, 0, 2].map(mean.add)).toEqual([3, 4, 6, 5, 4]);
});

test('a whole column at once: the same means, but none before there are enough values', () => {
  const mean = createTrailingMean(3);
  const means = new Float64Array(10);
  mean.addAll(Float64Array.of(3, -1, 5, -1, 10, -1), means, 0, 5, 2);
  mean.addAll(Float64Array.of(0, 0, 2, 0), means, 0, 4, 2);
  expect([...means.subarray(0, 5)]).toEqual([5, 0, 4, 0, 6]);
  mean.addAll(Float64Array.of(7), means, 0, 1, 1);
  expect(means[0]).toBe(3);
  createTrailingMean(3).addAll(Float64Array.of(1, 2, 3), means, 0, 3, 1);
  expect([...means.subarray(0, 3)]).toEqual([Number.NaN, Number.NaN, 2]);
});

test('agrees with adding up afresh, whatever comes', () => {
  const values = fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), { minLength: 1 });
  fc.assert(
    fc.property(values, fc.integer({ min: 1, max: 30 }), (list, length) => {
      const mean = createTrailingMean(length);
      list.forEach((value, k) => {
        const last = list.slice(Math.max(0, k + 1 - length), k + 1);
        const plain = last.reduce((sum, v) => sum + v, 0) / last.length;
        expect(Math.abs(mean.add(value) - plain)).toBeLessThan(1e-9);
      });
    }),
  );
});
