import { describe, expect, test } from 'vitest';
import type { Device } from '../../../src/home/devices.ts';
import type { FuelPrice } from '../../../src/home/prices.ts';
import { BOILER, home, measure, setup } from '../hand-made.ts';

const DRYER: Device = {
  name: 'dryer',
  room: 0,
  does: {
    kind: 'dehumidifier',
    type: 'compressor',
    ratedWater: 1e-4,
    ratedPower: 300,
    ratedTemperature: 27,
    ratedHumidity: 60,
    standby: 2,
    tank: 3,
  },
};
const STOVE: Device = {
  name: 'stove',
  room: 0,
  does: {
    kind: 'stove',
    batch: 1,
    interval: 3600,
    energy: 1.5e7,
    efficiency: 0.75,
    radiantShare: 0.4,
    lag: 1200,
    perRefuelling: [],
    roomAir: 0,
  },
};
const price = (day: number, carbon = 0): FuelPrice => ({
  tariff: { by: 'flat', price: day },
  standing: 0,
  carbon,
});
const PRICES = {
  currency: 'GBP',
  fuels: { gas: price(0.07), electricity: price(0.3, 0.2), wood: price(0.1, 0.02) },
};
const drying = (s: number) => s < 36; // 6 h
const moment = (s: number) => ({
  electricity: 100,
  devices: [
    drying(s)
      ? { electricity: 300, water: -1e-4, heat: 545, share: 1 }
      : { electricity: 2, heat: 2 },
    s >= 108 ? { fuel: 4000, heat: 3000, share: 1 } : {},
  ],
});

describe('devices', () => {
  const own = setup({ home: home({ devices: [DRYER, STOVE] }), prices: PRICES });
  const control = {
    rules: [],
    airings: [],
    devices: [
      { device: 0, starts: 2, emptied: 1 },
      { device: 0, starts: 1, emptied: 0 },
    ],
  };
  const found = measure(own, moment, { control });

  test('what each drew and did, and the counts of all its controls', () => {
    const dryer = found.devices.detail['dryer'];
    const stove = found.devices.detail['stove'];
    expect(dryer!.electricity_kwh).toBeCloseTo(0.3 * 6 + 0.002 * 18, 12);
    expect(dryer!.water_kg).toBeCloseTo(-2.16, 12);
    expect(dryer!.heat_kwh).toBeCloseTo(0.545 * 6 + 0.002 * 18, 12);
    expect(dryer).toMatchObject({ hours: 6, starts: 3, emptied: 1, fuel_kwh: 0 });
    expect(stove).toMatchObject({ electricity_kwh: 0, hours: 6, starts: 0, emptied: 0 });
    expect(stove!.fuel_kwh).toBeCloseTo(24, 12);
    expect(stove!.heat_kwh).toBeCloseTo(18, 12);
  });

  test('electricity of appliances and devices together, and of each device', () => {
    expect(found.devices.electricity_kwh).toBeCloseTo(2.4 + 1.836, 12);
    expect(Object.keys(found.devices.by_device)).toEqual(['dryer', 'stove']);
    expect(found.devices.by_device['dryer']).toBeCloseTo(1.836, 12);
  });

  test('logs are bought and burned as wood, their heat is not from emitters', () => {
    expect(found.heating.useful_kwh).toBe(0);
    expect(found.heating.delivered_kwh['wood']).toBeCloseTo(24, 12);
    expect(found.money.by_fuel['wood']).toBeCloseTo(2.4, 12);
    expect(found.money.by_fuel['electricity']).toBeCloseTo(0.3 * 4.236, 12);
    expect(found.carbon_kg).toBeCloseTo(24 * 0.02 + 4.236 * 0.2, 12);
  });

  test('wood without a price is left out and said', () => {
    const unpriced = setup({ home: own.home, prices: { currency: 'GBP', fuels: {} } });
    const ids = measure(unpriced, moment).notices.map(({ id }) => id);
    expect(ids).toContain('no-price-wood');
  });

  test('a device costs by the tariff of its moment', () => {
    const night = {
      tariff: {
        by: 'blocks',
        price: 0.3,
        blocks: [{ from: 0, to: 180, price: 0.1 }],
        clock: { from: [0], offset: [0] },
      },
      standing: 0,
      carbon: 0,
    } as const;
    const cheap = setup({
      home: home({ devices: [DRYER] }),
      prices: { currency: 'GBP', fuels: { electricity: night } },
    });
    const bill = measure(cheap, (s) => ({
      devices: [drying(s) ? { electricity: 300, share: 1 } : {}],
    }));
    expect(bill.money.energy).toBeCloseTo(0.9 * 0.1 + 0.9 * 0.3, 12);
    expect(bill.devices.detail['dryer']!.electricity_money).toBeCloseTo(0.9 * 0.1 + 0.9 * 0.3, 12);
    const unpriced = setup({ home: home({ devices: [DRYER] }) });
    expect(measure(unpriced, moment).devices.detail['dryer']!.electricity_money).toBeNull();
    expect(bill.heating.delivered_kwh).toEqual({}); // a dryer burns no logs
  });

  test('one that never runs is named', () => {
    const text = 'The device "dryer" never ran: look at its gate, its hours and its levels.';
    const idle = measure(own, () => ({}));
    expect(idle.notices).toContainEqual({ id: 'device-never-ran', text });
    expect(found.notices.map(({ id }) => id)).not.toContain('device-never-ran');
  });
});

describe('heat sources', () => {
  const own = setup({ home: home({ sources: [{ ...BOILER, backup: 3000 }] }), prices: PRICES });

  test('backup is electricity, drawn for heat', () => {
    const found = measure(own, () => ({ fuel: [1000], backup: [500], heating: 1350 }));
    expect(found.heating.delivered_kwh).toEqual({ gas: 24, electricity: 12 });
    expect(found.devices.electricity_kwh).toBe(0);
    expect(found.money.energy).toBeCloseTo(24 * 0.07 + 12 * 0.3, 12);
  });

  test('one backup among several sources is metered', () => {
    const sources = [BOILER, { ...BOILER, name: 'pump', backup: 3000 }];
    const found = measure(setup({ home: home({ sources }), prices: PRICES }), () => ({
      fuel: [1000, 250],
      backup: [0, 500],
    }));
    expect(found.heating.delivered_kwh).toEqual({ gas: 30, electricity: 12 });
  });
});
