import { describe, expect, test } from 'vitest';
import { annualisedCost, annuityFactor } from '../../../src/physics/economics/annuity-factor.ts';
import {
  netPresentValue,
  simplePayback,
} from '../../../src/physics/economics/net-present-value.ts';
import { type Comparison, compare } from '../../reference/compare.ts';

const NAN = Number.NaN;
const STUDY_SITE = 'worked solution on a study site (8 %, 6 years)';
const LIGHTING = 'lighting example: 12 000 spent, 16 000 saved over 4 years';

const ROWS: readonly (Omit<Comparison, 'topic' | 'got'> & { readonly got: () => number })[] = [
  {
    what: 'annuity factor, 8 %, 6 years',
    unit: 'years',
    source: STUDY_SITE,
    mark: 'published arithmetic',
    expected: 4.62288,
    got: () => annuityFactor(0.08, 6),
    tolerance: { absolute: 5e-6 },
    because: 'half the last digit printed',
  },
  {
    what: 'net present value of 2500 a year for 10 000, 8 %, 6 years',
    unit: 'money',
    source: STUDY_SITE,
    mark: 'published arithmetic',
    expected: 1557.2,
    got: () => netPresentValue(10_000, 2500, 0.08, 6),
    tolerance: { absolute: 0.01 },
    because: 'the last digit printed',
  },
  {
    what: 'payback of 2500 a year for 10 000',
    unit: 'years',
    source: STUDY_SITE,
    mark: 'published arithmetic',
    expected: 4,
    got: () => simplePayback(10_000, 2500),
    tolerance: { absolute: 1e-9 },
    because: 'a division',
  },
  {
    what: 'payback of 350 a year for 5000',
    unit: 'years',
    source: 'greenbuildingadvisor.com, inputs',
    mark: 'closed form',
    expected: 14.29,
    got: () => simplePayback(5000, 350),
    tolerance: { absolute: 0.005 },
    because: 'half the last digit printed',
  },
  {
    what: 'payback of better lighting',
    unit: 'years',
    source: LIGHTING,
    mark: 'published',
    expected: 3,
    got: () => simplePayback(12_000, 16_000 / 4),
    tolerance: { absolute: 1e-9 },
    because: 'a division',
  },
  {
    what: 'gain of better lighting without interest',
    unit: 'money',
    source: LIGHTING,
    mark: 'published',
    expected: 4000,
    got: () => netPresentValue(12_000, 4000, 0, 4),
    tolerance: { absolute: 1e-9 },
    because: 'a sum',
  },
  {
    what: 'gain of better lighting at 7 %',
    unit: 'money',
    source: LIGHTING,
    mark: 'closed form',
    expected: 1548.8,
    got: () => netPresentValue(12_000, 4000, 0.07, 4),
    tolerance: { absolute: 0.05 },
    because: 'half the last digit printed',
  },
  {
    what: '2900 a year for ever at 5 %',
    unit: 'money',
    source: 'perpetuity on a web page',
    mark: 'published',
    expected: 58_000,
    got: () => netPresentValue(0, 2900, 0.05, Number.POSITIVE_INFINITY),
    tolerance: { absolute: 1e-6 },
    because: 'a division',
  },
  {
    what: '2900 a year for ever at 10 %',
    unit: 'money',
    source: 'perpetuity on a web page',
    mark: 'published',
    expected: 29_000,
    got: () => netPresentValue(0, 2900, 0.1, Number.POSITIVE_INFINITY),
    tolerance: { absolute: 1e-6 },
    because: 'a division',
  },
];

test.each(ROWS)('$what is $expected', ({ got, ...row }) => {
  compare({ topic: 'Economics', ...row, got: got() });
});

describe('annuityFactor', () => {
  test('is the sum of the payments, each discounted', () => {
    let sum = 0;
    for (let year = 1; year <= 15; year++) sum += 1.035 ** -year;
    expect(annuityFactor(0.035, 15)).toBeCloseTo(sum, 10);
  });

  test('passes smoothly to no interest', () => {
    expect(annuityFactor(0, 12)).toBe(12);
    expect(annuityFactor(1e-12, 12)).toBeCloseTo(12, 9);
    expect(annuityFactor(0.05, 0)).toBe(0);
  });

  test('purchase costs are worth the price', () => {
    expect(annualisedCost(180, 0.03, 8) * annuityFactor(0.03, 8)).toBeCloseTo(180, 10);
    expect(annualisedCost(180, 0, 8)).toBeCloseTo(22.5, 12);
    expect(annualisedCost(0, 0.03, 8)).toBe(0);
  });

  test('refuses nonsense in words', () => {
    expect(() => annuityFactor(8, 6)).toThrow('annuityFactor: rate must be between 0 and 1, got 8');
    expect(() => annuityFactor(0, Number.POSITIVE_INFINITY)).toThrow(
      'annuityFactor: payments for ever need a rate above 0, got 0',
    );
    expect(() => annualisedCost(100, 0.05, 0)).toThrow(
      'annualisedCost: years must be above 0, got 0',
    );
    for (const attempt of [
      () => annuityFactor(NAN, 6),
      () => annuityFactor(0.05, NAN),
      () => annuityFactor(0.05, -1),
      () => annualisedCost(NAN, 0.05, 8),
    ]) {
      expect(attempt).toThrow(RangeError);
    }
  });
});

describe('netPresentValue and simplePayback', () => {
  test('what costs more every year never pays back', () => {
    expect(simplePayback(500, 0)).toBe(Number.POSITIVE_INFINITY);
    expect(simplePayback(500, -20)).toBe(Number.POSITIVE_INFINITY);
    expect(netPresentValue(500, -20, 0.03, 10)).toBeLessThan(-500);
  });

  test.each([50, 0, -20])(
    'what costs nothing has paid back at once, saving %d a year',
    (saving) => {
      expect(simplePayback(0, saving)).toBe(0);
    },
  );

  test('without interest the payback time is where nothing is gained or lost', () => {
    expect(netPresentValue(840, 70, 0, simplePayback(840, 70))).toBeCloseTo(0, 9);
  });

  test.each([
    () => netPresentValue(-1, 10, 0.05, 5),
    () => netPresentValue(NAN, 10, 0.05, 5),
    () => netPresentValue(100, NAN, 0.05, 5),
    () => simplePayback(NAN, 10),
    () => simplePayback(100, NAN),
  ])('refuses %s', (attempt) => {
    expect(attempt).toThrow(RangeError);
  });
});
