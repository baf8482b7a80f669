import { expect, test } from 'vitest';
import { guideline14 } from '../../../src/fit/judge/guideline-14.ts';

test('by hand from the definition', () => {
  // errors 1, -1, 2, 2 of observed 10, 10, 20, 20: mean 15, squares 10, sum 4, three free
  const observed = Float64Array.of(10, 10, 20, 20);
  const simulated = Float64Array.of(9, 11, 18, 18);
  const found = guideline14(observed, simulated)!;
  expect(found.cvRmse).toBeCloseTo(Math.sqrt(10 / 3) / 15, 12);
  expect(found.nmbe).toBeCloseTo(4 / (3 * 15), 12);
});

test('hours of a gap count for nothing; nothing to go by is null', () => {
  const found = guideline14(Float64Array.of(10, Number.NaN, 20), Float64Array.of(10, 99, 17))!;
  expect(found.nmbe).toBeCloseTo(3 / 15, 12); // 3 over one free times the mean 15
  expect(guideline14(Float64Array.of(1), Float64Array.of(1))).toBeNull();
  expect(guideline14(Float64Array.of(1, -1), Float64Array.of(1, 1))).toBeNull();
});
