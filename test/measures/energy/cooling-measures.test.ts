import { describe, expect, test } from 'vitest';
import type { Cooler } from '../../../src/home/home.ts';
import type { FuelPrice } from '../../../src/home/prices.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { BOILER, home, measure, room, setup } from '../hand-made.ts';

const cooler = (index: number): Cooler => ({
  ...{ name: 'unit', room: index, source: 'split', power: 2000, exhaust: 0, radiantShare: 0 },
  ...{ eer: { outdoor: [0], value: [3] }, coil: null },
});
/** 0.4 a kWh until 06:00, 0.1 from then on. */
const TARIFF: FuelPrice['tariff'] = {
  ...{ by: 'blocks', price: 0.1, clock: UTC_CLOCK },
  blocks: [{ from: 0, to: 360, price: 0.4 }],
};

describe('a day of two units in one room and one in another', () => {
  const own = setup({
    home: home({
      rooms: [room('den'), room('bed')],
      sources: [BOILER],
      cooling: [cooler(0), cooler(1), cooler(0)],
    }),
    prices: {
      currency: 'GBP',
      fuels: { electricity: { tariff: TARIFF, standing: 0, carbon: 0.2 } },
    },
  });
  // An hour is six steps; each works in the first 12 h only.
  const found = measure(own, (s) => ({
    electricity: 50,
    fuel: [0],
    coolers:
      s < 72
        ? [
            { removed: 900, electricity: 300 },
            { removed: 600, electricity: 200 },
            { removed: 300, electricity: 100 },
          ]
        : [],
  }));

  test('what was removed adds up over rooms and home', () => {
    expect(found.rooms['den']!.cooling_kwh).toBeCloseTo(1.2 * 12, 12);
    expect(found.rooms['bed']!.cooling_kwh).toBeCloseTo(0.6 * 12, 12);
    expect(found.cooling.removed_kwh).toBeCloseTo(1.8 * 12, 12);
  });

  test('its electricity is bought apart from that of appliances', () => {
    expect(found.cooling.delivered_kwh['electricity']).toBeCloseTo(0.6 * 12, 12);
    expect(found.devices.electricity_kwh).toBeCloseTo(0.05 * 24, 12);
    expect(found.heating.delivered_kwh).toEqual({ gas: 0 });
  });

  test('it costs what electricity costs at its hours, and carbon', () => {
    const cooling = 0.6 * (6 * 0.4 + 6 * 0.1);
    const appliances = 0.05 * (6 * 0.4 + 18 * 0.1);
    expect(found.money.by_fuel['electricity']).toBeCloseTo(cooling + appliances, 12);
    expect(found.carbon_kg).toBeCloseTo(0.2 * (7.2 + 1.2), 12);
  });
});

test('a unit that never ran is named, where the rest did', () => {
  const own = home({ rooms: [room('den'), room('bed')], cooling: [cooler(0), cooler(1)] });
  const { notices } = measure(setup({ home: own }), () => ({ coolers: [{ removed: 5 }] }));
  expect(notices.filter(({ id }) => id === 'cooling-never-ran').map(({ text }) => text)).toEqual([
    'Nothing was cooled in "bed": it stayed under its setpoint while its hours and its gate let it.',
  ]);
});

test('rooms in which nothing was cooled are told of together', () => {
  const own = home({ rooms: [room('den'), room('bed')], cooling: [cooler(0), cooler(1)] });
  const { notices } = measure(setup({ home: own }), () => ({}));
  expect(notices.filter(({ id }) => id === 'cooling-never-ran').map(({ text }) => text)).toEqual([
    'Nothing was cooled in "den" and "bed": they stayed under their setpoints while their hours and gates let them.',
  ]);
});

test('a home that nothing cools says so', () => {
  const found = measure(setup(), () => ({ electricity: 50 }));
  expect(found.cooling).toEqual({ removed_kwh: 0, delivered_kwh: {} });
  expect(found.rooms['den']!.cooling_kwh).toBe(0);
});
