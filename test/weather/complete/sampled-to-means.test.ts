import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sampledToMeans } from '../../../src/weather/complete/sampled-to-means.ts';

const readings = fc
  .array(fc.double({ min: 0, max: 1000, noNaN: true }), { minLength: 3, maxLength: 30 })
  .map((values) => Float64Array.from(values));
const delay = fc.double({ min: -2, max: 2, noNaN: true });

test('keeps the sum of a series that closes on itself', () => {
  fc.assert(
    fc.property(readings, delay, (values, late) => {
      const total = (series: Float64Array) => series.reduce((a, b) => a + b);
      const wanted = total(values);
      expect(Math.abs(total(sampledToMeans(values, late, true)) - wanted)).toBeLessThan(
        1e-9 * (1 + wanted),
      );
    }),
  );
});

test('is exact for a straight line: the mean is what the line has in mid-step', () => {
  const line = Float64Array.from({ length: 20 }, (_, k) => 3 * k);
  for (const late of [0, 0.1761, 0.5, 0.9]) {
    // Reading k stands at k + late; so the line's value at x is 3 (x - late).
    const means = sampledToMeans(line, late, false);
    for (let k = 2; k < 17; k++) expect(means[k]).toBeCloseTo(3 * (k + 0.5 - late), 9);
  }
});

test('readings at the start of steps make means of neighbours', () => {
  expect([...sampledToMeans(Float64Array.of(0, 2, 4, 10), 0, false)]).toEqual([1, 3, 7, 10]);
  expect([...sampledToMeans(Float64Array.of(0, 2, 4, 10), 0, true)]).toEqual([1, 3, 7, 5]);
});

test('readings in mid-step keep three quarters of themselves', () => {
  const one = sampledToMeans(Float64Array.of(0, 0, 8, 0, 0), 0.5, true);
  expect([...one]).toEqual([0, 1, 6, 1, 0]);
});

test('whole steps merely move', () => {
  const values = Float64Array.of(1, 5, 2, 7);
  const now = sampledToMeans(values, 0, true);
  expect([...sampledToMeans(values, 1, true)]).toEqual([now[3], now[0], now[1], now[2]]);
});
