import { expect, test } from 'vitest';
import { homeHeat } from '../../../src/fit/readings/home-heat.ts';
import { meterStretches } from '../../../src/fit/readings/meter-stretches.ts';
import type { Home } from '../../../src/home/home.ts';
import type { Log, LoggedSeries } from '../../../src/log/log.ts';
import { madeWeather } from '../../engine/homes.ts';

const DAY = 86_400;
const meter = (
  quantity: string,
  readings: readonly [day: number, watt: number][],
): LoggedSeries => ({
  ...{ quantity, place: 'home', room: null, device: null, reading: 'mean', from: 'm.csv' },
  times: Float64Array.from(readings, ([day]) => day * DAY),
  values: Float64Array.from(readings, ([, watt]) => watt),
});
const source = { name: 'boiler', fuel: 'gas', conversion: { by: 'efficiency', efficiency: 0.5 } };
const home = { sources: [source] } as unknown as Home;
const weather = madeWeather({}, { start: 0 });

/** Heat by the day, of 28 days of which the last 14 are withheld: its first hour. */
function byDay(series: LoggedSeries, steady = 0) {
  const log: Log = { series: [series], start: 0, end: 28 * DAY };
  const division = { start: 0, hours: 28 * 24, withheld: 14 * 24 };
  const found = homeHeat(log, home, division, weather, { gas: steady, electricity: null });
  return found && { ...found, days: [...found.observed].filter((_, hour) => hour % 24 === 0) };
}
const times = (count: number, value: number) => Array<number>(count).fill(value);

test('a gas meter that is read every week tells the mean of each week', () => {
  // Half of 800, 600, 400 and 200 W.
  const weekly = meter('gas', [
    [0, Number.NaN],
    [7, 800],
    [14, 600],
    [21, 400],
    [28, 200],
  ]);
  const found = byDay(weekly)!;
  expect(found.days).toEqual([
    ...times(7, 400),
    ...times(7, 300),
    ...times(7, 200),
    ...times(7, 100),
  ]);
  expect(new Set(found.stretches!.of).size).toBe(4);
  expect(found.words).toContain('the gas meter, from each of its readings to the next: ');
});

test('what lies on both sides of the withheld hours, or beyond the log, is compared with nothing', () => {
  const found = byDay(
    meter('gas', [
      [-3, Number.NaN],
      [4, 800],
      [11, 600],
      [18, 400],
      [25, 200],
      [32, 100],
    ]),
  );
  const none = Number.NaN;
  expect(found!.days).toEqual([
    ...times(4, none),
    ...times(7, 300),
    ...times(7, none),
    ...times(7, 100),
    ...times(3, none),
  ]);
  expect(
    byDay(
      meter('gas', [
        [0, none],
        [21, 400],
        [28, 200],
      ]),
    ),
  ).toBeNull();
});

test('a heat meter that is read every day tells days, one that is read every hour tells hours', () => {
  const days = Array.from({ length: 29 }, (_, d): [number, number] => [
    d,
    d === 0 ? Number.NaN : 100 * d,
  ]);
  expect(byDay(meter('heating power', days))!.stretches).not.toBeNull();
  const hours = days.flatMap(([d, watt]) =>
    Array.from({ length: 24 }, (_, h): [number, number] => [d + h / 24, watt]),
  );
  expect(byDay(meter('heating power', hours))!.stretches).toBeNull();
});

test('days are counted anew where hours begin to be withheld', () => {
  const daily = meter('gas', [
    [0, Number.NaN],
    [1, 1],
    [2, 2],
    [3, 3],
  ]);
  const of = meterStretches(daily, { start: 0, hours: 72 }, 30, new Float64Array(72));
  expect([0, 23, 24, 29, 30, 53, 54, 71].map((hour) => of[hour])).toEqual([0, 0, 1, 1, 2, 2, 3, 3]);
});

test('a gas meter is compared by the day however often it is read', () => {
  const hours = Array.from({ length: 28 * 24 + 1 }, (_, h): [number, number] => [
    h / 24,
    h === 0 ? Number.NaN : h % 24 === 8 ? 2400 : 0,
  ]);
  const found = byDay(meter('gas', hours))!;
  expect(found.days).toEqual(times(28, 50)); // half of 2400 W for an hour a day
});

test('whoever reads a meter in the evening instead of the morning reads it every day', () => {
  const of = (last: number) =>
    meterStretches(
      meter('gas', [
        [0, Number.NaN],
        [1, 1],
        [last, 2],
        [3, 3],
      ]),
      { start: 0, hours: 72 },
      72,
      new Float64Array(72),
    );
  expect([...new Set(of(2 + 11 / 24))]).toEqual([0, 1, 2]);
  // From 37 hours on it is a stretch of its own, on both sides of midnight.
  const apart = of(2 + 13 / 24);
  expect(apart[24]).toBeLessThan(0);
  expect([...apart.subarray(24, 61)].every((stretch) => stretch === apart[24])).toBe(true);
  expect([apart[23], apart[61]]).toEqual([0, 2]);
});
