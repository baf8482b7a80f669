import { describe, expect, test } from 'vitest';
import type { FuelPrice, Tariff } from '../../../src/home/prices.ts';
import { AHEAD, AUTUMN, SPRING } from '../../units/summer-time.ts';
import { BOILER, home, measure, START, setup } from '../hand-made.ts';

const flat = (price: number): Tariff => ({ by: 'flat', price });
const fuel = (tariff: Tariff, standing = 0, carbon = 0): FuelPrice => ({
  tariff,
  standing,
  carbon,
});

describe('money', () => {
  test('a day at 2 kW of gas and 0.5 kW of electricity, standing charges included', () => {
    const own = setup({
      home: home({ sources: [BOILER] }),
      prices: {
        currency: 'GBP',
        fuels: { gas: fuel(flat(0.07), 0.3, 0.2), electricity: fuel(flat(0.25), 0.5, 0.15) },
      },
    });
    const found = measure(own, () => ({ fuel: [2000], electricity: 500, heating: 1700 }));
    expect(found.heating.useful_kwh).toBeCloseTo(40.8, 9);
    expect(found.heating.delivered_kwh).toEqual({ gas: 48 });
    expect(found.devices.electricity_kwh).toBeCloseTo(12, 12);
    expect(found.money.by_fuel['gas']).toBeCloseTo(48 * 0.07 + 0.3, 9);
    expect(found.money.by_fuel['electricity']).toBeCloseTo(12 * 0.25 + 0.5, 9);
    expect(found.money.energy).toBeCloseTo(3.66 + 3.5, 9);
    expect(found.money.by_use).toEqual({
      gas: { heating: expect.closeTo(48 * 0.07, 9), cooling: 0, other: 0 },
      electricity: { heating: 0, cooling: 0, other: expect.closeTo(12 * 0.25, 9) },
    });
    expect(found.carbon_kg).toBeCloseTo(48 * 0.2 + 12 * 0.15, 9);
  });

  test('gas that activities burn is bought, with its meter and carbon, and is no heating', () => {
    const own = setup({
      ...{ activitiesBurnGas: true },
      prices: {
        currency: 'GBP',
        fuels: { gas: fuel(flat(0.07), 0.3, 0.2), electricity: fuel(flat(0.25)) },
      },
    });
    const found = measure(own, () => ({ gas: 100, electricity: 500 }));
    expect(found.devices).toMatchObject({ electricity_kwh: expect.closeTo(12, 12) });
    expect(found.devices.gas_kwh).toBeCloseTo(2.4, 12);
    expect(found.heating.delivered_kwh).toEqual({});
    expect(found.money.by_fuel['gas']).toBeCloseTo(2.4 * 0.07 + 0.3, 12);
    expect(found.carbon_kg).toBeCloseTo(2.4 * 0.2, 12);
  });

  test('a fuel without a price is left out, and a notice says how much', () => {
    const own = setup({ home: home({ sources: [{ ...BOILER, fuel: 'district heat' }] }) });
    const found = measure(own, () => ({ fuel: [1000] }));
    expect(found.money.energy).toBe(0);
    expect(found.notices).toContainEqual({
      id: 'no-price-district-heat',
      text:
        'No price is known for district heat: money and carbon leave out the 24 kWh of it ' +
        'that this plan draws.',
    });
  });

  test('standing charges follow the days of the wall clock: 25 hours of autumn are one day', () => {
    const midnight = Date.UTC(2023, 9, 28, 22) / 1000;
    const own = setup({
      prices: { currency: 'GBP', fuels: { electricity: fuel(flat(0.2), 0.6) } },
      clock: AHEAD,
      period: { start: midnight, hours: 25 },
    });
    expect(measure(own, () => ({})).money.energy).toBeCloseTo(0.6, 12);
  });

  test('less than a year is scaled to a year, and says so', () => {
    const own = setup({
      prices: { currency: 'GBP', fuels: { electricity: fuel(flat(0.2)) } },
      period: { start: START, hours: 30 * 24 },
    });
    const found = measure(own, () => ({ electricity: 1000 }), { dt: 3600 });
    expect(found.money.energy).toBeCloseTo(144, 9);
    expect(found.money.total_per_year).toBeCloseTo((144 * 8766) / 720, 9);
    expect(found.notices.map(({ id }) => id)).toContain('not-a-year');
  });

  test.each([
    [8759, 8766 / 8759],
    [17544, 8766 / 17544],
  ])('%s hours are whole years, which say nothing of scaling', (hours, share) => {
    const own = setup({
      prices: { currency: 'GBP', fuels: { electricity: fuel(flat(0.2)) } },
      period: { start: START, hours },
    });
    const found = measure(own, () => ({ electricity: 1000 }), { dt: 3600 });
    expect(found.money.total_per_year).toBeCloseTo(share * found.money.energy, 9);
    expect(found.notices.map(({ id }) => id)).not.toContain('not-a-year');
  });

  test.each([8760, 8784])('%s hours are a year', (hours) => {
    const own = setup({
      prices: { currency: 'GBP', fuels: { electricity: fuel(flat(0.2)) } },
      period: { start: START, hours },
    });
    const found = measure(own, () => ({ electricity: 1000 }), { dt: 3600 });
    expect(found.money.total_per_year).toBe(found.money.energy);
    expect(found.notices.map(({ id }) => id)).not.toContain('not-a-year');
  });
});

describe('tariff with blocks', () => {
  const night: Tariff = {
    by: 'blocks',
    price: 0.27,
    blocks: [{ from: 23 * 60 + 30, to: 6 * 60 + 15, price: 0.12 }],
    clock: AHEAD,
  };
  const bill = (start: number, hours: number, dt: number): number => {
    const own = setup({
      prices: { currency: 'EUR', fuels: { electricity: fuel(night) } },
      period: { start, hours },
    });
    return measure(own, () => ({ electricity: 1000 }), { dt, cuts: [5] }).money.energy;
  };
  const NIGHT = 6.75; // h from 23:30 to 06:15

  test.each([600, 900, 3600])('a day across midnight, steps of %s s that straddle edges', (dt) => {
    expect(bill(START, 24, dt)).toBeCloseTo(NIGHT * 0.12 + (24 - NIGHT) * 0.27, 9);
  });

  test('the night that loses an hour to summer time is an hour shorter', () => {
    const noon = SPRING - 14 * 3600;
    expect(bill(noon, 24, 600)).toBeCloseTo((NIGHT - 1) * 0.12 + (25 - NIGHT) * 0.27, 9);
  });

  test('the night that gets it back is an hour longer', () => {
    const noon = AUTUMN - 15 * 3600;
    expect(bill(noon, 24, 600)).toBeCloseTo((NIGHT + 1) * 0.12 + (23 - NIGHT) * 0.27, 9);
  });

  test('a week costs what its hours say, step by step', () => {
    const weekends: Tariff = {
      by: 'blocks',
      price: 0.3,
      blocks: [{ from: 0, to: 1440, days: 0b1100000, price: 0.1 }],
      clock: { from: [0], offset: [0] },
    };
    const own = setup({
      prices: { currency: 'EUR', fuels: { electricity: fuel(weekends) } },
      period: { start: START, hours: 168 },
    });
    const found = measure(own, () => ({ electricity: 1000 }), { cuts: [5, 300] });
    expect(found.money.energy).toBeCloseTo(48 * 0.1 + 120 * 0.3, 9);
  });
});

describe('tariff as a series', () => {
  test('half-hourly prices, some below zero, repeat after the last', () => {
    const prices = Float64Array.of(0.3, -0.1, 0.2);
    const own = setup({
      prices: {
        currency: 'EUR',
        fuels: { electricity: fuel({ by: 'series', start: START, step: 1800, prices }) },
      },
      period: { start: START, hours: 3 },
    });
    // Six half-hours: 0.3, -0.1, 0.2, 0.3, -0.1, 0.2, with 1 kW in the second and fifth only.
    const on = (s: number) => Math.floor(s / 3) % 3 === 1;
    const found = measure(own, (s) => ({ electricity: on(s) ? 1000 : 0 }));
    expect(found.money.energy).toBeCloseTo(-0.1, 12);
    expect(measure(own, () => ({ electricity: 1000 })).money.energy).toBeCloseTo(0.4, 12);
  });
});
