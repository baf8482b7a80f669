import { expect, test } from 'vitest';
import { purchaseCostPerYear } from '../../../src/measures/energy/purchase-cost-per-year.ts';

test('things of different lives add up as annuities', () => {
  const buys = [
    { what: 'fan', price: 100, lastsYears: 10 },
    { what: 'dryer', price: 180, lastsYears: 8 },
  ];
  expect(purchaseCostPerYear(buys, 0)).toBeCloseTo(10 + 22.5, 12);
  expect(purchaseCostPerYear(buys, 0.04)).toBeGreaterThan(32.5);
  expect(purchaseCostPerYear([], 0.04)).toBe(0);
});

test('a life of no length is refused in words', () => {
  expect(() => purchaseCostPerYear([{ what: 'dryer', price: 180, lastsYears: 0 }], 0.03)).toThrow(
    'annualisedCost: years must be above 0, got 0',
  );
});
