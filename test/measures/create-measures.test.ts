import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PlanMeasures } from '../../src/measures/plan-measures.ts';
import { BANDS, BOILER, home, type Moment, measure, room, START, setup } from './hand-made.ts';

const SPECIES = [
  { name: 'CO2', unit: 'ppm', outdoor: 420, penetration: 1 },
  { name: 'PM2.5', unit: 'µg/m3', outdoor: 8, penetration: 0.8 },
] as const;

test('how a trace is cut into stretches does not change a single figure', () => {
  const species = {
    CO2: { low: 0, high: 900, reason: 'test', hours: 0 },
    'PM2.5': { low: 0, high: 10, reason: 'test', hours: 24 },
  };
  const own = setup({
    home: home({
      rooms: [room('den'), room('bath', { coldSpotFactor: 0.5, volume: 12 })],
      species: SPECIES,
      sources: [BOILER],
    }),
    bands: [BANDS, { ...BANDS, species }],
    mouldClasses: ['sensitive', 'very sensitive'],
    prices: {
      currency: 'GBP',
      fuels: {
        gas: { tariff: { by: 'flat', price: 0.07 }, standing: 0.3, carbon: 0.2 },
        electricity: {
          tariff: {
            by: 'blocks',
            price: 0.27,
            blocks: [{ from: 30, to: 270, price: 0.12 }],
            clock: { from: [0], offset: [3600] },
          },
          standing: 0.5,
          carbon: 0.15,
        },
      },
    },
    // Over the end of a month, so that monthly sums are cut as well.
    period: { start: START + 28 * 86_400, hours: 4 * 24 },
  });
  const at = (s: number, i: number): Moment => ({
    air: 16 + 6 * wave(s, i, 1),
    humidity: 45 + 50 * wave(s, i, 2),
    occupants: wave(s, i, 3) > 0.5 ? wave(s, i, 4) : 0,
    heating: 800 * wave(s, i, 5),
    windowOpen: wave(s, i, 6) > 0.9 ? 1 : 0,
    condensation: 1e-6 * (wave(s, i, 7) - 0.5),
    species: [400 + 900 * wave(s, i, 8), 25 * wave(s, i, 9)],
    outdoor: -5 + 12 * wave(s, 0, 10),
    infiltration: 0.02 * wave(s, 0, 11),
    fuel: [1500 * wave(s, 0, 12)],
    electricity: 400 * wave(s, 0, 13),
  });
  const whole = measure(own, at, { cuts: [576] });
  expect(whole.rooms['bath']!.mould_index_peak).toBeGreaterThan(0);
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 200 }), { minLength: 1 }), (cuts) => {
      expect(measure(own, at, { cuts })).toEqual(whole);
    }),
    { numRuns: 25 },
  );
});

describe('the shape of the figures', () => {
  test('has the keys that the documentation names, and every number is finite', () => {
    const found = measure(
      setup({ home: home({ species: SPECIES, sources: [BOILER] }) }),
      () => ({}),
    );
    expect(Object.keys(found)).toEqual([
      'scenario',
      'plan',
      'period',
      'heating',
      'cooling',
      'blinds',
      'devices',
      'money',
      'carbon_kg',
      'species',
      'rooms',
      'outdoor_air',
      'outdoor_air_share_by_storey',
      'air_flows',
      'airing',
      'alerts',
      'balance',
      'handbook_cross_check',
      'assumed',
      'cautions',
      'notices',
    ]);
    expect(found.period).toEqual({
      from: '2023-01-02T00:00:00Z',
      to: '2023-01-03T00:00:00Z',
      hours: 24,
    });
    expect(Object.keys(found.rooms['den']!)).toEqual([
      'heating_kwh',
      'cooling_kwh',
      'mean_temperature_c',
      'mean_relative_humidity_pct',
      'species',
      'outside_band_hours',
      'outside_band_occupied_hours',
      'felt_cold_hours',
      'winter_cold_hours_per_day',
      'degree_hours_below',
      'degree_hours_above',
      'cold_spot_hours_above_80_pct',
      'mould_index_peak',
      'mould_index_end',
      'condensation_hours',
      'condensation_kg',
      'window_open_hours',
      'occupied_hours',
      'arrivals',
      'cold_arrivals',
      'cold_arrival_hours',
      'recovery_minutes_mean',
      'recovery_minutes_most',
      'outdoor_air_l_per_s',
      'outdoor_air_l_per_s_per_person_asleep',
    ]);
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
    expect(numbersIn(found).every(Number.isFinite)).toBe(true);
  });

  test('passes on what the setup brings, and what was bought', () => {
    const assumed = [
      { path: '/home/x', value: 1, unit: 'm', low: 0, high: 2, source: 'common practice' },
    ];
    const cautions = [{ id: 'co-alarm', text: 'Fit one.' }];
    const buys = [{ what: 'dryer', price: 180, lastsYears: 8 }];
    const found = measure(setup({ assumed, cautions, purchases: buys }), () => ({}));
    expect(found).toMatchObject({ assumed, cautions });
    expect(found.money).toMatchObject({ purchase_cost_per_year: 22.5, total_per_year: 22.5 });
  });
});

describe('balances', () => {
  const residuals = (residual: Parameters<typeof measure>[2]) =>
    measure(setup(), () => ({}), residual);

  test('that close are reported and raise no notice', () => {
    const found = residuals({
      entries: { residual: { energy: 1e-6, water: 1e-12, species: [1e-13, 1e-11] } },
    });
    expect(found.balance).toEqual({
      energy_residual: 1e-6,
      water_residual: 1e-12,
      air_residual: 0,
      pollutant_residual: 1e-11,
    });
    expect(found.notices.filter(({ id }) => id.startsWith('error-of-ours'))).toEqual([]);
  });

  test('that do not close are an error of ours, said first', () => {
    const found = residuals({ entries: { residual: { water: 2e-6 } } });
    expect(found.notices[0]).toEqual({
      id: 'error-of-ours-water-balance',
      text:
        'This is an error of ours: the water balance does not close. The residual is 0.000002 ' +
        'of throughput, 0.000001 is the most we accept. Do not rely on the figures of this plan.',
    });
  });

  test('a residual that is not a number does not close', () => {
    const found = residuals({ entries: { residual: { species: [0, Number.NaN, 1e-12] } } });
    expect(found.notices.map(({ id }) => id)).toContain('error-of-ours-pollutant-balance');
  });
});

/** Something between 0 and 1 that never repeats, without randomness. */
const wave = (s: number, i: number, k: number): number =>
  0.5 + 0.5 * Math.sin(0.37 * s * (1 + k / 7) + i + k);

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value as PlanMeasures).flatMap(numbersIn);
}
