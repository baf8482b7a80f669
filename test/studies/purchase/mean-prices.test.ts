import { describe, expect, test } from 'vitest';
import type { Prices, Tariff } from '../../../src/home/prices.ts';
import {
  devicePrice,
  fuelPrices,
  meanFuelPrice,
  priceOfDifference,
  pricesOfBoth,
} from '../../../src/studies/purchase/mean-prices.ts';
import { somePlan } from '../some-plan.ts';

const FLAT: Tariff = { by: 'flat', price: 0.3 };
const NIGHT: Tariff = {
  ...{ by: 'blocks', price: 0.3, clock: { from: [0], offset: [0] } },
  blocks: [{ from: 0, to: 240, price: 0.1 }],
};
const prices = (electricity?: Tariff): Prices => {
  const of = (tariff: Tariff) => ({ tariff, standing: 0, carbon: 0 });
  const gas = of({ by: 'flat', price: 0.07 });
  return { currency: 'GBP', fuels: electricity ? { gas, electricity: of(electricity) } : { gas } };
};
const drier = (kwh: number, money: number | null) => ({
  ...{ electricity_kwh: kwh, electricity_money: money, fuel_kwh: 0, water_kg: 0, heat_kwh: 0 },
  ...{ hours: 0, starts: 0, emptied: 0, hours_4_pa_below_outdoors: null },
});

describe('what a kWh of a device cost', () => {
  test.each([
    ['no tariff', undefined, 100, null, 0, 'no price of electricity is known'],
    ['one price', FLAT, 100, 30, 0.3, 'the same at all hours'],
    ['hours', NIGHT, 100, 15, 0.15, 'mean of the hours in which it ran'],
    ['hours, and it never ran', NIGHT, 0, 0, 0, 'it drew none'],
  ] as const)('by %s', (_what, tariff, kwh, money, price, how) => {
    expect(devicePrice(drier(kwh, money), prices(tariff))).toEqual({ price, how });
  });
});

test('a difference costs the one price, or its money over its kWh', () => {
  expect(priceOfDifference('electricity', 12, 100, prices(FLAT)).price).toBe(0.3);
  expect(priceOfDifference('electricity', 12, 100, prices(NIGHT)).price).toBeCloseTo(0.12, 12);
});

describe('the mean price of a fuel', () => {
  const plan = somePlan('dry');
  const bought = {
    ...plan,
    heating: { ...plan.heating, delivered_kwh: { gas: 10_000, electricity: 300 } },
    cooling: { removed_kwh: 0, delivered_kwh: { electricity: 200 } },
    devices: { ...plan.devices, electricity_kwh: 500, detail: { drier: drier(200, 30) } },
    money: {
      ...plan.money,
      by_fuel: { gas: 700, electricity: 220 },
      by_use: { electricity: { heating: 60, cooling: 40, other: 100 } },
    },
  };

  test('is its money by uses over all its kWh', () => {
    expect(meanFuelPrice(bought, 'electricity', prices(NIGHT))).toBeCloseTo(200 / 1000, 12);
    expect(meanFuelPrice(bought, 'gas', prices(NIGHT))).toBe(0.07);
    // Prices of another plan may lack it; one price is one whether it is used or not.
    expect(meanFuelPrice(bought, 'electricity', prices())).toBeCloseTo(200 / 1000, 12);
    expect(meanFuelPrice(somePlan('idle'), 'electricity', prices(FLAT))).toBe(0.3);
    expect(meanFuelPrice(bought, 'wood', prices(NIGHT))).toBeNull();
    const unknown = { ...bought, money: { ...bought.money, by_use: {} } };
    expect(meanFuelPrice(unknown, 'electricity', prices(NIGHT))).toBeNull();
  });

  test('counts for a fuel that the plan gives up, and not for standing charges alone', () => {
    const before = {
      ...bought,
      money: {
        ...bought.money,
        by_fuel: { gas: 800, electricity: 330 },
        by_use: { ...bought.money.by_use, gas: { heating: 700, cooling: 0, other: 0 } },
      },
    };
    expect(fuelPrices(before, bought, null, prices(NIGHT))).toEqual({
      gas: { price: 0.07, what: 'gas' },
    });
    const elsewhere: Prices = { currency: 'GBP', fuels: {} };
    expect(fuelPrices(before, bought, null, elsewhere)).toEqual({
      gas: { price: 700 / 10_000, what: 'gas' },
    });
  });

  test('counts for fuels of which one plan pays more, at the hours of a device where it has one', () => {
    const baseline = {
      ...bought,
      money: { ...bought.money, by_use: { electricity: { heating: 60, cooling: 40, other: 70 } } },
    };
    const own = fuelPrices(baseline, bought, 'drier', prices(NIGHT));
    expect(own).toEqual({
      electricity: { price: expect.closeTo(0.15, 12), what: 'electricity while it runs' },
    });
    const all = fuelPrices(baseline, bought, null, prices(NIGHT));
    expect(all).toEqual({ electricity: { price: expect.closeTo(0.2, 12), what: 'electricity' } });
  });
});

test('of both plans: those of the plan, and of fuels that only the baseline has', () => {
  const { gas, electricity } = pricesOfBoth(prices(FLAT), prices(NIGHT)).fuels;
  expect(electricity?.tariff).toBe(NIGHT);
  expect(gas?.tariff).toEqual({ by: 'flat', price: 0.07 });
  expect(pricesOfBoth(prices(FLAT), prices()).fuels.electricity?.tariff).toBe(FLAT);
});
