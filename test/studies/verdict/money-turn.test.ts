import { expect, test } from 'vitest';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import { moneyTurn } from '../../../src/studies/verdict/money-turn.ts';
import type { Weighing } from '../../../src/studies/verdict/weigh-plan.ts';
import { somePlan } from '../some-plan.ts';

/** Two years of a home that heats with one fuel at so many kWh and so much money a year. */
function heated(name: string, fuel: 'gas' | 'electricity', kwh: number, money: number) {
  const made = somePlan(name, { hours: 2 * 8766 });
  const by_use = { [fuel]: { heating: 2 * money, cooling: 0, other: 0 } };
  const plan: PlanMeasures = {
    ...made,
    heating: { ...made.heating, delivered_kwh: { [fuel]: 2 * kwh } },
    devices: { ...made.devices, electricity_kwh: 0 },
    money: { ...made.money, by_fuel: { [fuel]: 2 * money }, by_use, total_per_year: money },
  };
  return plan;
}

const weighed = (more: Partial<Weighing>): Weighing => ({
  ...{ verdict: 'worth it', standing: 1, extra: 0, helped: [], dampAlone: false },
  ...{ effects: [], harms: [], rival: null, better: null, aside: null },
  ...more,
});
const NO_PRICES = { prices: { currency: 'GBP', fuels: {} }, discountRate: 0 };

test('a plan that gives up a fuel turns where that is cheap, by what it cost before', () => {
  const setup = {
    ...{ baseline: heated('as-lived', 'gas', 10_000, 1000), purchases: [], ...NO_PRICES },
    plan: heated('pump', 'electricity', 3000, 900),
    ...{ weighed: weighed({ extra: -100 }), range: { low: -100, high: -100 } },
  };
  // 100 a year less for the 1000 of gas: a tenth below today's 0.1
  const { value, ...turn } = moneyTurn(setup);
  expect(turn).toEqual({ of: 'fuel price', fuel: 'gas', today: 0.1 });
  expect(value).toBeCloseTo(0.09, 12);
});

test('what costs too much turns at its own price, though something else does as much', () => {
  const plan = heated('dear', 'gas', 10_000, 960);
  const setup = {
    ...{ baseline: heated('as-lived', 'gas', 10_000, 1000), plan, ...NO_PRICES },
    purchases: [{ what: 'thing', price: 1000, lastsYears: 10 }],
    weighed: weighed({ verdict: 'too little', extra: 60, rival: heated('other', 'gas', 1, 950) }),
    range: { low: 60, high: 60 },
  };
  // 40 a year are saved on the bill, over ten years
  expect(moneyTurn(setup)).toEqual({ of: 'price', fuel: '', value: 400, today: 1000 });
});
