import { describe, expect, test } from 'vitest';
import { purchaseCostPerYear } from '../../../src/measures/energy/purchase-cost-per-year.ts';
import { compareMeasures, type Purchases } from '../../../src/studies/compare/compare.ts';
import { compare } from '../../reference/compare.ts';
import { somePlan } from '../some-plan.ts';

/** A thing of a price that saves so much a year, set beside doing nothing. */
function invest(price: number, saving: number, rate: number, lastsYears: number) {
  const bought: Purchases = { purchases: [{ what: 'x', price, lastsYears }], discountRate: rate };
  const nothing: Purchases = { purchases: [], discountRate: rate };
  const plans = [
    somePlan('as-lived', { energy: 20_000 }),
    somePlan('buy', {
      energy: 20_000 - saving,
      purchaseCost: purchaseCostPerYear(bought.purchases, rate),
    }),
  ];
  return compareMeasures(plans, [nothing, bought]).differences[0]!;
}

describe('payback and present value', () => {
  const row = { topic: 'Economics', because: 'rounding of the print' } as const;

  test('10 000 that saves 2500 a year for 6 years at 8 %', () => {
    const found = invest(10_000, 2500, 0.08, 6);
    const source = 'worked solution on a study site (inputs garbled, unique from its answers)';
    const mark = 'published arithmetic';
    compare({
      ...row,
      what: 'payback of 10 000 at 2500 a year',
      unit: 'years',
      source,
      mark,
      expected: 4,
      got: found.payback_years!,
      tolerance: { absolute: 1e-9 },
    });
    compare({
      ...row,
      what: 'net present value, 8 %, 6 years',
      unit: 'currency',
      source,
      mark,
      expected: 1557.2,
      got: found.npv!,
      tolerance: { absolute: 0.01 },
    });
  });

  test('5000 for 350 a year, and 12 000 for 4000 a year over four years', () => {
    const slow = invest(5000, 350, 0, 20);
    const quick = invest(12_000, 4000, 0.07, 4);
    compare({
      ...row,
      what: 'payback of 5000 at 350 a year',
      unit: 'years',
      source: 'inputs of a building adviser page',
      mark: 'closed form',
      expected: 14.29,
      got: slow.payback_years!,
      tolerance: { absolute: 0.005 },
    });
    compare({
      ...row,
      what: 'payback of 12 000 at 4000 a year',
      unit: 'years',
      source: 'lighting example on a web page',
      mark: 'published',
      expected: 3,
      got: quick.payback_years!,
      tolerance: { absolute: 1e-9 },
    });
    compare({
      ...row,
      what: 'net present value, 7 %, 4 years',
      unit: 'currency',
      source: 'the same inputs discounted',
      mark: 'closed form',
      expected: 1548.8,
      got: quick.npv!,
      tolerance: { absolute: 0.05 },
    });
    compare({
      ...row,
      what: 'undiscounted gain of the lighting example',
      unit: 'currency',
      source: 'lighting example on a web page',
      mark: 'published',
      expected: 4000,
      got: invest(12_000, 4000, 0, 4).npv!,
      tolerance: { absolute: 1e-6 },
    });
  });

  test('rounding is no saving: 1e-9 a year would pay 600 back in 6e11 years', () => {
    expect(invest(600, 1e-9, 0.03, 20).payback_years).toBeNull();
  });

  test('what both buy counts in neither; what is replaced anyway is taken off', () => {
    const bought = (...lives: readonly number[]): Purchases => ({
      purchases: lives.map((lastsYears) => ({ what: `of ${lastsYears}`, price: 300, lastsYears })),
      discountRate: 0,
    });
    const cost = ({ purchases }: Purchases) => purchaseCostPerYear(purchases, 0);
    const between = (had: Purchases, has: Purchases) =>
      compareMeasures(
        [
          somePlan('as-lived', { energy: 1000, purchaseCost: cost(had) }),
          somePlan('buy', { energy: 950, purchaseCost: cost(has) }),
        ],
        [had, has],
      ).differences[0]!;
    expect(between(bought(30), bought(30))).toMatchObject({ payback_years: null, npv: null });
    // 50 - 30 a year over the 10 years of what is new, not over 30.
    const found = between(bought(30), bought(30, 10));
    expect(found).toMatchObject({ payback_years: 6, npv: expect.closeTo(200, 9) });
    // Of two that are new the longer life counts, the shorter is bought again: 50 - 30 - 15 over 20 years.
    expect(between(bought(30), bought(30, 10, 20)).npv).toBeCloseTo(100, 9);
  });

  test('days that are no year tell neither', () => {
    const bought = { purchases: [{ what: 'x', price: 100, lastsYears: 10 }], discountRate: 0 };
    const plans = [
      somePlan('as-lived', { energy: 100, hours: 768 }),
      somePlan('buy', { energy: 80, hours: 768, purchaseCost: 10 }),
    ];
    const [found] = compareMeasures(plans, [
      { purchases: [], discountRate: 0 },
      bought,
    ]).differences;
    expect(found).toMatchObject({ payback_years: null, npv: null });
  });

  test('what saves no cash has no payback, and its present value is below zero', () => {
    const found = invest(180, -20, 0.03, 8);
    expect(found.payback_years).toBeNull();
    expect(found.npv).toBeLessThan(-180);
  });

  test('where nothing is bought both are null', () => {
    const plans = [somePlan('as-lived'), somePlan('nineteen', { energy: 900 })];
    const [found] = compareMeasures(plans).differences;
    expect(found).toMatchObject({ payback_years: null, npv: null, total_money_per_year: -100 });
  });

  test('what the baseline already bought is not paid for again', () => {
    const fan = { what: 'fan', price: 100, lastsYears: 10 };
    const both = { purchases: [fan], discountRate: 0 };
    const plans = [
      somePlan('as-lived', { purchaseCost: 10 }),
      somePlan('nineteen', { energy: 900, purchaseCost: 10 }),
    ];
    const [found] = compareMeasures(plans, [both, both]).differences;
    expect(found).toMatchObject({ payback_years: null, total_money_per_year: -100 });
  });
});

describe('differences', () => {
  const damp = (hours: number) => ({ outside: { humidity_high: hours } });

  test('are the plan minus the baseline, hours added up over the rooms', () => {
    const { baseline, plans, differences } = compareMeasures([
      somePlan('as-lived', { energy: 1200, useful: 9000, den: damp(100), bath: damp(50) }),
      somePlan('nineteen', {
        energy: 1000,
        useful: 7500,
        den: {
          outside: { humidity_high: 180, temperature_low: 30 },
          occupied: { humidity_high: 25 },
          over: { cold_arrival_hours: 12 },
        },
        bath: { ...damp(50), over: { cold_arrival_hours: 3 } },
      }),
    ]);
    expect(baseline).toBe('as-lived');
    expect(plans).toHaveLength(2);
    expect(differences).toEqual([
      {
        plan: 'nineteen',
        useful_kwh: -1500,
        energy_money: -200,
        total_money_per_year: -200,
        humidity_high_hours: 80,
        temperature_low_hours: 30,
        cold_arrival_hours: 15,
        humidity_high_empty_hours: 55,
        payback_years: null,
        money_per_damp_hour_avoided: null,
        npv: null,
        causes: [],
      },
    ]);
  });

  test('money for each damp hour avoided, in a year and in half of one', () => {
    const found = (hours: number) =>
      compareMeasures([
        somePlan('as-lived', { energy: 500, hours, den: damp(400) }),
        somePlan('dry', { energy: 500, purchaseCost: 60, hours, den: damp(100) }),
      ]).differences[0]!.money_per_damp_hour_avoided;
    expect(found(8760)).toBeCloseTo(60 / 300, 12);
    expect(found(4383)).toBeCloseTo(60 / 600, 12);
  });

  test('a plan that avoids damp hours and saves money has no price for them', () => {
    const [found] = compareMeasures([
      somePlan('as-lived', { den: damp(400) }),
      somePlan('better', { energy: 900, den: damp(100) }),
    ]).differences;
    expect(found!.money_per_damp_hour_avoided).toBeNull();
  });

  test('a plan that costs more and is damper has no price for damp hours avoided', () => {
    const [found] = compareMeasures([
      somePlan('as-lived', { den: damp(100) }),
      somePlan('worse', { energy: 1100, den: damp(400) }),
    ]).differences;
    expect(found!.money_per_damp_hour_avoided).toBeNull();
  });

  test('one plan has none; no plan is refused', () => {
    expect(compareMeasures([somePlan('as-lived')]).differences).toEqual([]);
    expect(() => compareMeasures([])).toThrow('compareMeasures: needs at least one plan');
  });
});
