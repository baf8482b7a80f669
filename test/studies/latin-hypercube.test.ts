import { expect, test } from 'vitest';
import { latinHypercube } from '../../src/studies/latin-hypercube.ts';

test.each([
  [1, 1],
  [7, 3],
  [100, 12],
  [1000, 2],
])('of %i points on %i edges every piece of every edge holds one', (samples, dimensions) => {
  const points = latinHypercube(samples, dimensions, 5);
  expect(points).toHaveLength(samples);
  for (let d = 0; d < dimensions; d++) {
    const pieces = points.map((point) => Math.floor(point[d]! * samples)).sort((a, b) => a - b);
    expect(pieces).toEqual(Array.from({ length: samples }, (_, k) => k));
  }
});

test('the same seed gives the same points, another seed others', () => {
  expect(latinHypercube(20, 3, 1)).toEqual(latinHypercube(20, 3, 1));
  expect(latinHypercube(20, 3, 1)).not.toEqual(latinHypercube(20, 3, 2));
});

test('a further edge moves nothing on those before it', () => {
  const first = (dimensions: number) =>
    latinHypercube(20, dimensions, 9).map((point) => point.slice(0, 2));
  expect(first(5)).toEqual(first(2));
});

test('the mean of a function that adds up is met better than by drawing alone', () => {
  // McKay, Beckman, Conover (1979): for additive functions the variance falls. Of x + y + z over the
  // cube the mean is 1.5; drawn alone, 100 points miss it by sqrt(3 / 12 / 100) = 0.05 on average.
  const misses = Array.from({ length: 50 }, (_, seed) => {
    const points = latinHypercube(100, 3, seed);
    return points.reduce((sum, [x, y, z]) => sum + x! + y! + z!, 0) / 100 - 1.5;
  });
  const spread = Math.sqrt(misses.reduce((sum, miss) => sum + miss * miss, 0) / 50);
  // Within each piece of width 1/100 a point lies evenly: sqrt(3 / 12 / 100) / 100 = 0.0005.
  expect(spread).toBeGreaterThan(0.0003);
  expect(spread).toBeLessThan(0.0008);
});
