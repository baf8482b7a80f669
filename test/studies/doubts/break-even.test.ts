import { describe, expect, test } from 'vitest';
import { atFuelPrice, atPurchasePrice } from '../../../src/studies/compare/other-prices.ts';
import { extraPerYear } from '../../../src/studies/compare/plan-money.ts';
import { type BreakEvenSetup, breakEven } from '../../../src/studies/doubts/break-even.ts';
import { asUsed, somePlan } from '../some-plan.ts';

const search = (more: Partial<BreakEvenSetup>) =>
  breakEven({
    ...{ today: 0.27, low: 0.1, high: 0.9, resolution: 0.01, mostRuns: 20 },
    decision: (price) => 100 * price - 41,
    ...more,
  });

describe('where a decision flips', () => {
  test.each([3, 4, 7, 20])('is exact in a linear world, with %i runs at most', async (mostRuns) => {
    const found = await search({ mostRuns });
    expect(found.value).toBeCloseTo(0.41, 12);
    expect(found.runs).toBeLessThanOrEqual(mostRuns);
  });

  test('counts every time the decision was asked for', async () => {
    let asked = 0;
    const decision = (x: number) => {
      asked++;
      return x ** 3 - 0.2;
    };
    const found = await search({ decision, resolution: 1e-4, mostRuns: 50 });
    expect(found.runs).toBe(asked);
    expect(found.value).toBeCloseTo(Math.cbrt(0.2), 6);
  });

  test('stops at the resolution, and lies within it', async () => {
    const step = (x: number) => (x < 0.5 ? -1 : 1);
    const found = await search({ decision: step, resolution: 0.1 });
    expect(found.runs).toBe(3 + 3); // 0.63, halved until 0.079
    expect(Math.abs(found.value! - 0.5)).toBeLessThanOrEqual(0.1);
  });

  test('of a jump is the middle of what is left, whatever the sizes on its two sides', async () => {
    const jump = (x: number) => (x < 0.5 ? -7 : 3000 - x);
    const found = await search({ decision: jump, resolution: 0.1 });
    expect(Math.abs(found.value! - 0.5)).toBeLessThanOrEqual(0.05);
    // and a bend is none
    const bend = (x: number) => (x < 0.5 ? x - 0.5 : 3 * (x - 0.5));
    expect(Math.abs((await search({ decision: bend })).value! - 0.5)).toBeLessThanOrEqual(0.01);
  });

  test('is null where the decision is the same at both ends and today', async () => {
    expect(await search({ decision: () => -3 })).toEqual({
      ...{ value: null, runs: 3 },
    });
  });

  test('is found below today as well as above, and the nearer of two is taken', async () => {
    const below = await search({ decision: (x) => 100 * x - 15 });
    expect(below.value).toBeCloseTo(0.15, 12);
    const dent = (x: number) => (x < 0.2 ? x - 0.2 : 0.5 - x);
    const near = await search({ decision: (x) => -Math.max(-1, Math.min(1, 100 * dent(x))) });
    expect(Math.abs(near.value! - 0.2)).toBeLessThanOrEqual(0.01);
    const dear = (x: number) => Math.max(-1, Math.min(1, 100 * (x < 0.5 ? x - 0.2 : 0.8 - x)));
    const above = await search({ today: 0.7, decision: dear });
    expect(Math.abs(above.value! - 0.8)).toBeLessThanOrEqual(0.01);
  });

  test('is an end of the range where that is just undecided, without asking further', async () => {
    expect(await search({ decision: (x) => x - 0.9 })).toMatchObject({ value: 0.9, runs: 3 });
  });

  test('is today where today is undecided', async () => {
    expect((await search({ decision: (x) => x - 0.27 })).value).toBe(0.27);
  });

  test('waits for decisions that come later', async () => {
    expect((await search({ decision: async (x) => 41 - 100 * x })).value).toBeCloseTo(0.41, 12);
  });

  test('refuses what makes no sense, in words', async () => {
    await expect(search({ low: 0.3 })).rejects.toThrow(
      'breakEven: needs low <= today <= high, got 0.3, 0.27, 0.9',
    );
    await expect(search({ mostRuns: 2 })).rejects.toThrow('at least 3 runs');
    await expect(search({ resolution: Number.NaN })).rejects.toThrow('a resolution above 0');
    await expect(search({ decision: () => Number.NaN })).rejects.toThrow(
      'breakEven: the decision at 0.27 is no number',
    );
  });
});

describe('pricing again without running again', () => {
  const extraAtFuelPrice = (times: number) =>
    extraPerYear(atFuelPrice(base, 'electricity', times), atFuelPrice(plan, 'electricity', times));
  // 100 more for electricity (priced 0.27 today), 130 less for gas, 25 a year for purchase cost
  const base = somePlan('as-lived', { energy: 1500 });
  const plan = withMoney(somePlan('dry', { energy: 1470, purchaseCost: 25 }), {
    gas: 970,
    electricity: 500,
  });

  test('flips at the price by hand: electricity that takes up 105 where it took 100', async () => {
    const found = await search({
      today: 1,
      high: 3,
      decision: (times) => extraAtFuelPrice(times),
    });
    expect(found.value).toBeCloseTo(1.05, 9);
  });

  test('today it is the difference as it was run', () => {
    expect(extraAtFuelPrice(1)).toBeCloseTo(-5, 9);
    const buy = { what: 'drier', price: 200, lastsYears: 8 };
    expect(extraPerYear(base, atPurchasePrice(plan, [buy], 1, 0))).toBeCloseTo(-5, 9);
  });

  test('a device of 8 years may cost 40 more where 5 a year are left', async () => {
    const buy = { what: 'drier', price: 200, lastsYears: 8 };
    const found = await search({
      ...{ today: 200, low: 0, high: 1000, resolution: 1 },
      decision: (price) => extraPerYear(base, atPurchasePrice(plan, [buy], price / buy.price, 0)),
    });
    expect(found.value).toBeCloseTo(240, 9);
  });

  test('a standing charge is no dearer where a kWh is', () => {
    // 100 of the 120 are for kWh
    const paid = withMoney(somePlan('gas', { energy: 1120 }), { gas: 100, electricity: 1000 });
    const standing = {
      ...paid,
      money: { ...paid.money, by_fuel: { gas: 120, electricity: 1000 } },
    };
    expect(atFuelPrice(standing, 'gas', 2).money.total_per_year).toBe(1220);
  });

  test('a device twice as dear costs twice as much a year', () => {
    const buy = { what: 'drier', price: 200, lastsYears: 8 };
    const { money } = atPurchasePrice(somePlan('dry', { purchaseCost: 25 }), [buy], 2, 0);
    expect(money.purchase_cost_per_year).toBeCloseTo(50, 9);
    expect(money.total_per_year).toBeCloseTo(1000 + 50, 9);
  });
});

function withMoney(plan: ReturnType<typeof somePlan>, by_fuel: Record<string, number>) {
  return { ...plan, money: { ...plan.money, by_fuel, by_use: asUsed(by_fuel) } };
}

test('what is undecided today turns there, without a step', async () => {
  const reach = { today: 2, low: 0, high: 9, resolution: 0.1, mostRuns: 20 };
  const found = await breakEven({ ...reach, decision: (value) => value - 2 });
  expect(found).toEqual({ value: 2, runs: 3 });
});
