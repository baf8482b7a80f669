import { describe, expect, test } from 'vitest';
import { annuityFactor, owningPerYear } from '../../src/measures/owning-per-year.ts';
import { compare } from '../reference/compare.ts';

describe('annuityFactor', () => {
  const row = { topic: 'Economics', unit: '-', because: 'rounding of the print' } as const;

  test('agrees with worked solutions', () => {
    compare({
      ...row,
      what: 'annuity factor, 8 %, 6 years',
      source:
        'worked solution on a study site (inputs garbled on the page, unique from its answers)',
      mark: 'published arithmetic',
      expected: 4.62288,
      got: annuityFactor(0.08, 6),
      tolerance: { absolute: 5e-6 },
    });
    compare({
      ...row,
      what: 'annuity factor, 7 %, 4 years',
      source: 'sum of four discounted years',
      mark: 'closed form',
      expected: 3.38721,
      got: annuityFactor(0.07, 4),
      tolerance: { absolute: 5e-6 },
    });
  });

  test('for ever, 2900 a year is worth 58 000 at 5 % and 29 000 at 10 %', () => {
    for (const [rate, worth] of [
      [0.05, 58_000],
      [0.1, 29_000],
    ] as const) {
      compare({
        ...row,
        what: `2900 a year for ever at ${100 * rate} %`,
        unit: 'currency',
        source: 'perpetuity example on a study site',
        mark: 'published arithmetic',
        expected: worth,
        got: 2900 * annuityFactor(rate, 200),
        tolerance: { relative: 1e-4 },
        because: 'years beyond the 200th are worth (1 + r)^-200, 6e-5 at 5 %',
      });
    }
  });

  test('meets the rate of 0 without a jump', () => {
    expect(annuityFactor(0, 7)).toBe(7);
    expect(annuityFactor(1e-12, 7)).toBeCloseTo(7, 9);
  });

  test('refuses lives and rates that mean nothing, in words', () => {
    expect(() => annuityFactor(0.05, 0)).toThrow('annuityFactor: years must be between');
    expect(() => annuityFactor(Number.NaN, 5)).toThrow(
      'annuityFactor: discount rate must be between -0.5 and 1 1/year, got NaN 1/year',
    );
  });
});

test('things of different lives add up as annuities', () => {
  const buys = [
    { what: 'fan', price: 100, lastsYears: 10 },
    { what: 'dryer', price: 180, lastsYears: 8 },
  ];
  expect(owningPerYear(buys, 0)).toBeCloseTo(10 + 22.5, 12);
  expect(owningPerYear(buys, 0.04)).toBeGreaterThan(32.5);
  expect(owningPerYear([], 0.04)).toBe(0);
});
