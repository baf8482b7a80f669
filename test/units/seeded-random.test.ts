import { expect, test } from 'vitest';
import { seededRandom, standardNormal } from '../../src/units/seeded-random.ts';
import { compare } from '../reference/compare.ts';

test('is the published generator', () => {
  compare({
    topic: 'Random numbers',
    what: 'first number of Mulberry32 from seed 0',
    unit: '-',
    source: 'T. Ettinger 2017; the value that tests of ten public repositories hold',
    mark: 'published',
    expected: 0.26642920868471265,
    got: seededRandom(0)(),
    tolerance: { absolute: 0 },
    because: 'whole-number arithmetic',
  });
});

test('the same seed draws the same, another one others', () => {
  const draw = (seed: number) => Array.from({ length: 5 }, seededRandom(seed));
  expect(draw(7)).toEqual(draw(7));
  expect(draw(7)).not.toEqual(draw(8));
});

test('is even between 0 and 1: mean, spread and neighbours', () => {
  const random = seededRandom(42);
  const n = 100_000;
  const x = Array.from({ length: n }, random);
  const mean = x.reduce((a, b) => a + b) / n;
  const variance = x.reduce((a, b) => a + (b - mean) ** 2, 0) / n;
  const lag = x.slice(1).reduce((a, b, k) => a + (b - mean) * (x[k]! - mean), 0) / n / variance;
  // Four standard errors each: 1/sqrt(12 n), 1/sqrt(180 n), 1/sqrt(n).
  expect(Math.abs(mean - 0.5)).toBeLessThan(4 / Math.sqrt(12 * n));
  expect(Math.abs(variance - 1 / 12)).toBeLessThan(4 / Math.sqrt(180 * n));
  expect(Math.abs(lag)).toBeLessThan(4 / Math.sqrt(n));
});

test('standardNormal has mean 0, deviation 1, and the tails of the normal curve', () => {
  const random = seededRandom(1);
  const n = 100_000;
  const x = Array.from({ length: n }, () => standardNormal(random));
  const mean = x.reduce((a, b) => a + b) / n;
  const variance = x.reduce((a, b) => a + b * b, 0) / n;
  const beyond = x.filter((value) => Math.abs(value) > 1.959964).length / n;
  expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(n));
  expect(Math.abs(variance - 1)).toBeLessThan(4 * Math.sqrt(2 / n));
  expect(Math.abs(beyond - 0.05)).toBeLessThan(4 * Math.sqrt((0.05 * 0.95) / n));
});
