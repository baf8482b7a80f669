import { expect, test } from 'vitest';
import { addNormal, MOST_DEVIATIONS } from '../../src/units/add-normal.ts';
import { stemOf } from '../../src/units/seeded-draw.ts';
import { compare } from '../reference/compare.ts';

const COUNT = 2_000_000;
const drawn = Float64Array.from({ length: COUNT }, (_, b) => normalFrom(stemOf(5, 10), b));
const mean = (of: (x: number) => number): number =>
  drawn.reduce((sum, x) => sum + of(x), 0) / COUNT;

// Even moments of the normal distribution are 1, 3, 15, 105; each mean is let off by four of its
// standard deviations.
const OFF = 4 / Math.sqrt(COUNT);

test('normal draws have mean 0, standard deviation 1, no skew and the tails of a bell', () => {
  expect(Math.abs(mean((x) => x))).toBeLessThan(OFF);
  expect(Math.abs(mean((x) => x ** 2) - 1)).toBeLessThan(OFF * Math.sqrt(3 - 1));
  expect(Math.abs(mean((x) => x ** 3))).toBeLessThan(OFF * Math.sqrt(15));
  expect(Math.abs(mean((x) => x ** 4) - 3)).toBeLessThan(OFF * Math.sqrt(105 - 9));
});

// 3.66 lies beyond the last layer, where draws are made in another way.
test.each([
  [0.5, 0.617075],
  [1, 0.317311],
  [2, 0.0455003],
  [3, 0.0026998],
  [3.66, 0.00025221],
])('as many lie beyond %d standard deviations as should', (edge, share) => {
  compare({
    topic: 'Control',
    what: `share of normal draws beyond ${edge} standard deviations either way`,
    unit: '-',
    source: 'tables of the normal distribution, 2 (1 - Φ)',
    mark: 'closed form',
    expected: share,
    got: mean((x) => Number(Math.abs(x) > edge)),
    tolerance: { absolute: 4 * Math.sqrt((share * (1 - share)) / COUNT) },
    because: `four standard deviations of a count among ${COUNT} draws`,
  });
});

test('the layers do not show: narrow bins hold what the bell says', () => {
  const width = 0.05;
  const bins = new Float64Array(80);
  for (const x of drawn) bins[Math.floor(x / width) + 40]! += 1;
  for (let k = 0; k < bins.length; k++) {
    const middle = (k - 39.5) * width;
    // Mean of the density over the bin, by Simpson's rule.
    const share =
      (width * (density(middle - width / 2) + 4 * density(middle) + density(middle + width / 2))) /
      6;
    expect(Math.abs(bins[k]! - COUNT * share)).toBeLessThan(4.5 * Math.sqrt(COUNT * share));
  }
});

test('a draw depends on what it is for and when, and on nothing else', () => {
  const all = [normalFrom(1, 2), normalFrom(2, 1), normalFrom(1, 1), normalFrom(2, 2)];
  expect(new Set(all).size).toBe(4);
  expect(normalFrom(1, 2)).toBe(all[0]);
});

test('a draw is added, times its deviation', () => {
  const noisy = { reading: 2, noise: 7 };
  addNormal(noisy, 1, 2);
  expect(noisy).toEqual({ reading: 2 + 7 * normalFrom(1, 2), noise: 7 });
});

test('no draw is further out than it may be', () => {
  for (const x of drawn) if (!(Math.abs(x) < MOST_DEVIATIONS)) expect.fail(`drew ${x}`);
  // The smallest of the tail's even draws is half a step of 32 bits above 0.
  const lastEdge = 3.6541528853610088;
  expect(lastEdge - Math.log(0.5 / 2 ** 32) / lastEdge).toBeLessThan(MOST_DEVIATIONS);
});

function normalFrom(stem: number, b: number): number {
  const noisy = { reading: 0, noise: 1 };
  addNormal(noisy, stem, b);
  return noisy.reading;
}

function density(x: number): number {
  return Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI);
}
