import { describe, expect, test } from 'vitest';
import { meteredHeat } from '../../../src/fit/readings/metered-heat.ts';
import type { Home } from '../../../src/home/home.ts';
import type { Log, LoggedSeries } from '../../../src/log/log.ts';
import { meansOverSteps } from '../../../src/log/onto-steps.ts';
import { madeWeather } from '../../engine/homes.ts';

const gas: LoggedSeries = {
  ...{
    quantity: 'gas',
    place: 'home',
    room: null,
    device: null,
    reading: 'mean',
    from: 'm.csv, gas',
  },
  times: Float64Array.of(0, 86_400, 172_800, 259_200),
  values: Float64Array.of(Number.NaN, 1000, 2000, 60),
};
const NOBODY_SAID = { gas: null, electricity: null };
/** -5 °C to the end of the first day, and 5 °C after it. */
const OUTDOORS = madeWeather({ temperature: (hour) => (hour <= 24 ? -5 : 5) }, { start: 0 });
const log = (...series: LoggedSeries[]): Log => ({ series, start: 0, end: 259_200 });
const source = { name: 'boiler', fuel: 'gas', conversion: { by: 'efficiency', efficiency: 0.9 } };
const home = (...sources: object[]) => ({ sources }) as unknown as Home;

test('the meter less its steady part, times the efficiency', () => {
  // a fifth of the mean of 1020 W is 204 W; 0.9 of 796, 1796 and nothing
  const found = meteredHeat(log(gas), home(source), OUTDOORS, NOBODY_SAID)!;
  expect([...found.series.values].map((w) => Math.round(10 * w) / 10)).toEqual([
    Number.NaN,
    716.4,
    1616.4,
    0,
  ]);
  expect(found.series.quantity).toBe('heating power');
  expect(found.words).toContain('less 20 % of its mean for hot water and cooking (assumed; say');
  expect(
    meteredHeat(log(gas), home(source), OUTDOORS, { ...NOBODY_SAID, gas: 0 })!.series.values[3],
  ).toBeCloseTo(54, 9);
});

test('of a boiler that comes and goes the steady part is that of the day, not of the hours it burns', () => {
  // Two days, hour by hour: 2000 W for a quarter of the time, 3000 W for a third; then none.
  const HOUR = 3600;
  const on = (hour: number) => (hour <= 24 ? hour % 4 === 1 && 2000 : hour % 3 === 1 && 3000) || 0;
  const hours = Array.from({ length: 72 }, (_, k) => k + 1).filter((h) => h <= 48 || h % 4 === 0);
  const cycling = {
    ...gas,
    times: Float64Array.of(0, ...hours.map((hour) => hour * HOUR)),
    values: Float64Array.of(Number.NaN, ...hours.map((hour) => (hour <= 48 ? on(hour) : 0))),
  };
  const { values } = meteredHeat(log(cycling), home(source), OUTDOORS, NOBODY_SAID)!.series;
  const dayMean = (from: number) =>
    values.slice(from, from + 24).reduce((sum, power) => sum + power, 0) / 24;
  // Days of 500, 1000 and 0 W: a fifth of their mean is 100 W.
  expect(dayMean(1)).toBeCloseTo(0.9 * (500 - 100), 9);
  expect(dayMean(25)).toBeCloseTo(0.9 * (1000 - 100), 9);
  expect(Math.max(...values.slice(49))).toBe(0);
});

test('a reading counts for as long as it stands for', () => {
  const HOUR = 3600;
  const uneven = {
    ...gas,
    times: Float64Array.of(0, 6 * HOUR, 24 * HOUR),
    values: Float64Array.of(Number.NaN, 1000, 200), // 400 W over the day
  };
  const quarter = { ...NOBODY_SAID, gas: 0.25 };
  const { values } = meteredHeat(log(uneven), home(source), OUTDOORS, quarter)!.series;
  expect((6 * values[1]! + 18 * values[2]!) / 24).toBeCloseTo(0.9 * 300, 9);
  expect(values[1]! / values[2]!).toBeCloseTo(5, 9);
});

test('a home with other heat, with two sources, or with logged heat has none by its gas', () => {
  const electric = { ...source, fuel: 'electricity' };
  const heat: LoggedSeries = { ...gas, quantity: 'heating power', room: 'den', place: 'room' };
  expect(meteredHeat(log(gas), home(electric), OUTDOORS, NOBODY_SAID)).toBeNull();
  expect(meteredHeat(log(gas), home(source, source), OUTDOORS, NOBODY_SAID)).toBeNull();
  expect(meteredHeat(log(gas, heat), home(source), OUTDOORS, NOBODY_SAID)).toBeNull();
  expect(meteredHeat(log(), home(source), OUTDOORS, NOBODY_SAID)).toBeNull();
});

describe('the electricity of the heating', () => {
  const drawn: LoggedSeries = { ...gas, quantity: 'heating electricity', from: 'm.csv, pump' };
  const pump = {
    ...{ name: 'pump', fuel: 'electricity' },
    conversion: { by: 'cop', outdoor: [-15, 5], cop: [2, 4] },
  };
  const heat = (by: object, electricity: number | null) =>
    meteredHeat(log(drawn), home(by), OUTDOORS, { gas: null, electricity })!;

  test('of a heat pump is heat by its COP outdoors, less what heats water', () => {
    // COP is 3 at -5 °C, on the straight line, and 4 at 5 °C; a tenth of the mean of 1020 W is 102 W
    expect([...heat(pump, 0).series.values]).toEqual([Number.NaN, 3000, 8000, 240]);
    const [, first, second, third] = heat(pump, 0.1).series.values;
    expect([first, second, third]).toEqual([
      expect.closeTo(3 * 898, 9),
      expect.closeTo(4 * 1898, 9),
      0,
    ]);
    expect(heat(pump, null).words).toBe(
      'Heat to rooms is taken from the electricity of the heating, day by day: less 15 % of its mean for hot water ' +
        '(assumed; say "electricity beside heating" under "log:"), times the COP of the scenario at the temperature outdoors.',
    );
  });

  test('of a pump whose plug reports changes counts for as long as it runs', () => {
    const HOUR = 3600;
    const plug: LoggedSeries = {
      ...{ ...drawn, reading: 'state', holdsUntil: 48 * HOUR },
      times: Float64Array.of(0, 6 * HOUR, 8 * HOUR, 30 * HOUR, 40 * HOUR),
      values: Float64Array.of(0, 2400, 0, 2400, 0),
    };
    const always3 = { ...pump, conversion: { by: 'cop', outdoor: [-15, 5], cop: [3, 3] } };
    const beside = { gas: null, electricity: 0.1 };
    const { series } = meteredHeat(log(plug), home(always3), OUTDOORS, beside)!;
    // Days of 200 and of 1000 W: a tenth of their mean is 60 W, and a COP of 3.
    const days = meansOverSteps(series, { start: 0, step: 24 * HOUR, count: 2 }, 24 * HOUR);
    expect([...days]).toEqual([expect.closeTo(3 * 140, 9), expect.closeTo(3 * 940, 9)]);
  });

  test('of direct heating is the heat itself', () => {
    const direct = { ...pump, conversion: { by: 'efficiency', efficiency: 1 } };
    expect([...heat(direct, null).series.values]).toEqual([...drawn.values]);
    expect(heat(direct, null).words).toContain('day by day: times an efficiency of 1.00.');
  });

  test('comes before gas, and does not count where rooms have their own or a boiler heats', () => {
    const found = meteredHeat(log(gas, drawn), home(pump), OUTDOORS, NOBODY_SAID)!;
    expect(found.meter).toBe(drawn);
    expect(meteredHeat(log(drawn), home(source), OUTDOORS, NOBODY_SAID)).toBeNull();
    const ofRoom: LoggedSeries = { ...drawn, room: 'den', place: 'room' };
    expect(meteredHeat(log(drawn, ofRoom), home(pump), OUTDOORS, NOBODY_SAID)).toBeNull();
  });
});
