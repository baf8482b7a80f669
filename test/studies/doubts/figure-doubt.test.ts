import { describe, expect, test } from 'vitest';
import {
  correlationRatio,
  figureDoubt,
  rankCorrelation,
  strongestByChance,
} from '../../../src/studies/doubts/figure-doubt.ts';
import { compare } from '../../reference/compare.ts';

// S. Siegel, Nonparametric Statistics for the Behavioral Sciences, McGraw-Hill 1956, chapter 9:
// twelve students' striving for status, authoritarianism, and how often each yielded to a group.
const STRIVING = [42, 46, 39, 37, 65, 88, 86, 56, 62, 92, 54, 81];
const AUTHORITARIAN = [82, 98, 87, 40, 116, 113, 111, 83, 85, 126, 106, 117];
const YIELDED = [0, 0, 1, 1, 3, 4, 5, 6, 7, 8, 8, 12];

test('Spearman rank correlation of a textbook', () => {
  const row = {
    ...{ topic: 'Studies', unit: '-', mark: 'from memory' as const },
    source: 'Siegel, Nonparametric Statistics, 1956, chapter 9',
  };
  compare({
    ...row,
    what: 'rank correlation of striving and authoritarianism, 12 students',
    expected: 0.82,
    got: rankCorrelation(STRIVING, AUTHORITARIAN),
    tolerance: { absolute: 0.005 },
    because: 'two decimals are printed',
  });
});

test('ties share the mean of their ranks', () => {
  // By hand: squared differences of rank add up to 109.5; squares about the mean rank come to 143, and
  // to 143 - 3 x 0.5 with three pairs of ties.
  const corrected = (141.5 + 143 - 109.5) / (2 * Math.sqrt(141.5 * 143));
  expect(rankCorrelation(STRIVING, YIELDED)).toBeCloseTo(corrected, 12);
});

describe('rank correlation', () => {
  test('is 1 for whatever rises, -1 for whatever falls, 0 where nothing moves', () => {
    const x = [1, 2, 3, 4, 5];
    expect(rankCorrelation(x, x.map(Math.exp))).toBeCloseTo(1, 12);
    expect(
      rankCorrelation(
        x,
        x.map((v) => -(v ** 3)),
      ),
    ).toBeCloseTo(-1, 12);
    expect(rankCorrelation(x, [7, 7, 7, 7, 7])).toBe(0);
    expect(rankCorrelation([1, 2], [1, 2])).toBe(0);
  });

  test('of many inputs only the strongest by chance in one study of twenty passes', () => {
    // Normal quantiles of tables: 0.975 is 1.960, 0.9975 is 2.807; the library's are good to 1 %.
    expect(Math.abs(strongestByChance(1, 101) / 0.196 - 1)).toBeLessThan(0.01);
    expect(Math.abs(strongestByChance(10, 101) / 0.2807 - 1)).toBeLessThan(0.01);
  });
});

test('correlation ratio, by hand: marks of three subjects', () => {
  // Sums of squares by hand: 9640 in all, 6780 between the means 36, 33 and 78 of 5, 4 and 6.
  const groups = [0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2];
  const marks = [45, 70, 29, 15, 21, 40, 20, 30, 42, 65, 95, 80, 70, 85, 73];
  expect(correlationRatio(groups, marks)).toBeCloseTo(Math.sqrt(6780 / 9640), 12);
  expect(correlationRatio([0, 1], [3, 3])).toBe(0);
});

test('a figure: its tenths, and what moves it', () => {
  const shares = Array.from({ length: 101 }, (_, k) => k / 100);
  const doubt = figureDoubt({
    asIs: 3,
    figures: shares.map((share) => 100 * share),
    inputs: [
      { path: '/still', shares: shares.map((_, k) => (k * 37) % 101) },
      { path: '/falls', shares: shares.map((share) => 1 - share) },
    ],
    years: [],
  });
  expect(doubt).toMatchObject({ as_is: 3, p10: 10, median: 50, p90: 90 });
  expect(doubt.matters.map(({ path }) => path)).toEqual(['/falls']);
  expect(doubt.matters[0]!.correlation).toBeCloseTo(-1, 12);
});
