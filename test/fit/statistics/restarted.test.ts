import { expect, test } from 'vitest';
import { restarted } from '../../../src/fit/statistics/restarted.ts';
import { autocorrelationOf, weigh } from '../../../src/fit/statistics/whitening.ts';

const hours = (days: number, of: (k: number) => number): Float64Array =>
  Float64Array.from({ length: 24 * days }, (_, k) => of(k));

test('a lasting level goes, what happens within days stays, first days count for nothing', () => {
  const found = restarted(hours(10, (k) => (k >= 120 ? 7 : 3) + (k % 24 === 12 ? 1 : 0)));
  expect(found.subarray(0, 24).every(Number.isNaN)).toBe(true);
  expect(found.subarray(120, 144).every(Number.isNaN)).toBe(true);
  // the first day's mean is the level and 1/24
  expect(found[24 + 11]).toBeCloseTo(-1 / 24, 12);
  expect(found[24 + 12]).toBeCloseTo(23 / 24, 12);
  expect(found[144 + 12]).toBeCloseTo(23 / 24, 12);
});

test('a stretch whose first day is mostly unknown is left out', () => {
  const found = restarted(hours(10, (k) => (k > 4 && k < 24 ? Number.NaN : 2)));
  expect(found.subarray(0, 120).every(Number.isNaN)).toBe(true);
  expect(found[150]).toBe(0);
});

test('a sensor that was moved weighs nothing as restarted and much as a free run', () => {
  const moved = hours(10, (k) => (k >= 120 ? 2.5 : 0));
  const weights = autocorrelationOf(moved, 0.1, 'restarted');
  expect(weights).toEqual({ rho: 0, sd: 0.1 });
  const into = new Float64Array(moved.length);
  weigh('restarted', moved, weights, into);
  expect(into.every((x) => x === 0)).toBe(true);
  weigh('free run', moved, weights, into);
  expect(into[200]).toBe(25);
});
