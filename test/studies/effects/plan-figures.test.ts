import { expect, test } from 'vitest';
import { planFigures } from '../../../src/studies/effects/plan-figures.ts';
import { someLevel, somePlan } from '../some-plan.ts';

test('shares are of the rooms and their time, or of the time that somebody is in', () => {
  const year = 8760;
  const { warm, damp, dry, spots, alerts, money, dampest, wettest } = planFigures({
    ...somePlan('made by hand', {
      energy: 900,
      purchaseCost: 50,
      den: {
        outside: { humidity_high: 0.2 * year, humidity_low: 0.1 * year },
        occupied: { temperature_high: 300 },
        over: { occupied_hours: 4000, cold_spot_hours_above_80_pct: 0.5 * year },
      },
      bath: {
        outside: { humidity_high: 0.4 * year },
        over: { occupied_hours: 1000, cold_spot_hours_above_80_pct: 0.1 * year },
      },
    }),
    alerts: { fired: 104, someone_home: 0, acted_on: 0, per_week: 2, by_rule: {} },
  });
  expect([warm, damp, dry, spots].map((share) => Number(share.toFixed(9)))).toEqual([6, 30, 5, 30]);
  expect(dampest).toEqual({ value: 40, room: 'bath' });
  expect(wettest).toEqual({ value: 50, room: 'den' });
  expect([alerts, money]).toEqual([2, 950]);
});

test('rooms are too warm by their degree-hours over the hours in which they are', () => {
  const hot = (hours: number, degreeHours: number) => ({
    outside: { temperature_high: hours },
    over: { degree_hours_above: degreeHours },
  });
  // 1000 h by 3 K and 500 h by 6 K.
  const { warmBy } = planFigures(somePlan('hot', { den: hot(1000, 3000), bath: hot(500, 3000) }));
  expect(warmBy).toBe(4);
  expect(planFigures(somePlan('fine')).warmBy).toBe(0);
});

test('nobody at home is never too warm', () => {
  const nobody = { over: { occupied_hours: 0 } };
  expect(planFigures(somePlan('empty', { den: nobody, bath: nobody })).warm).toBe(0);
});

test('energy is all that is bought in a year, cooling and gas of cooking with it', () => {
  const whole = somePlan('half a year', { hours: 4383, useful: 900 });
  const plan = {
    ...whole,
    cooling: { removed_kwh: 300, delivered_kwh: { electricity: 100 } },
    devices: { ...whole.devices, electricity_kwh: 700, gas_kwh: 50 },
  };
  expect(planFigures(plan).energy).toBeCloseTo(2 * (900 / 0.9 + 100 + 700 + 50), 9);
});

test('cold and mould are those of the room worst off; cold of all days where there is no winter', () => {
  const plan = somePlan('made by hand', {
    den: { over: { winter_cold_hours_per_day: 1.5, mould_index_peak: 0.5 } },
    bath: { over: { winter_cold_hours_per_day: 1, mould_index_peak: 2.5 } },
  });
  expect(planFigures(plan)).toMatchObject({
    cold: { value: 1.5, room: 'den' },
    mould: { value: 2.5, room: 'bath' },
  });
  const summer = { over: { winter_cold_hours_per_day: null } };
  const week = somePlan('a week of summer', {
    ...{ hours: 168, den: summer },
    bath: { over: { ...summer.over, felt_cold_hours: 14 } },
  });
  expect(planFigures(week).cold).toEqual({ value: 2, room: 'bath' });
  expect(planFigures(somePlan('made by hand')).cold).toEqual({ value: 0, room: '' });
});

test('stale air is told by the worst night of any room, a pollutant by the mean of the rooms', () => {
  const { air } = planFigures({
    ...somePlan('made by hand', {
      den: {
        outside: { co2_high: 876, pm25_high: 438 },
        over: { species: { co2: someLevel(700), pm25: someLevel(8) } },
      },
      bath: { over: { species: { co2: someLevel(900), pm25: someLevel(4) } } },
    }),
    species: {
      co2: { label: 'CO2', unit: 'ppm', mean_outdoors: 420 },
      pm25: { label: 'PM2.5', unit: 'µg/m3', mean_outdoors: 8 },
    },
  });
  expect(air).toMatchObject([
    { name: 'co2', unit: 'ppm', kind: 'worst night', value: expect.closeTo(1080, 9), over: 5 },
    { name: 'pm25', unit: 'µg/m3', kind: 'mean', value: 6, over: 2.5 },
  ]);
});

test('what is carried on request is minded from a tenth of its usual limit on, in one hour of twenty', () => {
  const minded = (grains: number): boolean => {
    const { air } = planFigures({
      ...somePlan('made by hand', {
        den: { over: { species: { pollen: someLevel(grains) } } },
        bath: { over: { species: { pollen: someLevel(grains) } } },
      }),
      species: { pollen: { label: 'Pollen', unit: 'grains/m3', mean_outdoors: 8 } },
    });
    return air[0]!.minded;
  };
  // Usual limit 30 grains/m3; one hour in twenty has half as much again as the mean.
  expect([minded(1.9), minded(2.1)]).toEqual([false, true]);
});

test('a year is whole to the day, and of a part of one the money in its days is told', () => {
  const partOf = (days: number) => planFigures(somePlan('some days', { hours: 24 * days })).part;
  expect([365, 366, 364.5, 730].map(partOf)).toEqual([null, null, null, null]);
  expect([78, 363, 368].map((days) => partOf(days)?.length)).toEqual([
    '78\u00a0days',
    '363\u00a0days',
    '368\u00a0days',
  ]);
});
