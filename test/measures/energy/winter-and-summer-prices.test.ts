import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { homeWith } from '../../scenario/problems-of.ts';
import { readOnce } from '../../scenario/read-once.ts';
import { BOILER, home, measure, setup } from '../hand-made.ts';

// From 17 to 20 h 0.40 from October to March and 0.10 from April to September, 0.25 at all other
// hours; gas 0.08 from October to March and 0.06 from April to September. The home is on UTC.
const MONEY = `money:
  currency: GBP
  electricity:
    price: 0.25
    blocks:
      - { price: 0.40, months: Oct-Mar, from: "17:00", to: "20:00" }
      - { price: 0.10, months: Apr-Sep, from: "17:00", to: "20:00" }
  gas: { price: 0.06, blocks: [{ price: 0.08, months: Oct-Mar }] }
`;
const TEXT = homeWith(MONEY).replace('Europe/London', 'Etc/UTC');

/** Money of a home that draws 1 kW of electricity and 2 kW of gas at all times. */
function moneyOf(from: string, days: number) {
  const { prices } = preparePlan(readOnce(TEXT, 'h.yaml'), {
    ...{ plan: null, set: [], files: new Map() },
  });
  const period = { start: Date.parse(`${from}T00:00Z`) / 1000, hours: 24 * days };
  const own = setup({ home: home({ sources: [BOILER] }), prices, period });
  return measure(own, () => ({ electricity: 1000, fuel: [2000] }), { dt: 3600 }).money;
}

describe('prices of winter and of summer', () => {
  // A day: 21 h at 0.25 and 3 h at 0.40 or 0.10; 48 kWh of gas at 0.08 or 0.06.
  const [winter, summer] = [21 * 0.25 + 3 * 0.4, 21 * 0.25 + 3 * 0.1];

  test('a year has 182 days from October to March and 183 from April to September', () => {
    const money = moneyOf('2023-01-01', 365);
    expect(money.by_fuel['electricity']).toBeCloseTo(182 * winter + 183 * summer, 9);
    expect(money.by_fuel['gas']).toBeCloseTo(48 * (182 * 0.08 + 183 * 0.06), 9);
    expect(money.total_per_year).toBe(money.energy);
  });

  test('30 days from the middle of March have 17 of winter and 13 of summer', () => {
    const money = moneyOf('2023-03-15', 30);
    expect(money.by_fuel['electricity']).toBeCloseTo(17 * winter + 13 * summer, 9);
    expect(money.by_fuel['gas']).toBeCloseTo(48 * (17 * 0.08 + 13 * 0.06), 9);
  });

  test('the two weeks after New Year know no summer', () => {
    expect(moneyOf('2023-01-01', 14).by_fuel['electricity']).toBeCloseTo(14 * winter, 9);
  });
});
