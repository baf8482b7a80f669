import { expect, test } from 'vitest';
import { meteredHeat } from '../../../src/fit/readings/metered-heat.ts';
import { meansOver } from '../../../src/fit/simulate/channel.ts';
import type { Home } from '../../../src/home/home.ts';
import type { Log, LoggedSeries } from '../../../src/log/log.ts';

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
const log = (...series: LoggedSeries[]): Log => ({ series, start: 0, end: 259_200 });
const source = { name: 'boiler', fuel: 'gas', conversion: { by: 'efficiency', efficiency: 0.9 } };
const home = (...sources: object[]) => ({ sources }) as unknown as Home;

test('the meter less its steady part, times the efficiency', () => {
  // a fifth of the mean of 1020 W is 204 W; 0.9 of 796, 1796 and nothing
  const found = meteredHeat(log(gas), home(source), null)!;
  expect([...found.series.values].map((w) => Math.round(10 * w) / 10)).toEqual([
    Number.NaN,
    716.4,
    1616.4,
    0,
  ]);
  expect(found.series.quantity).toBe('heating power');
  expect(found.words).toContain('less 20 % of its mean for hot water and cooking (assumed; say');
  expect(meteredHeat(log(gas), home(source), 0)!.series.values[3]).toBeCloseTo(54, 9);
});

test('a home with other heat, with two sources, or with logged heat has none by its gas', () => {
  const electric = { ...source, fuel: 'electricity' };
  const heat: LoggedSeries = { ...gas, quantity: 'heating power', room: 'den', place: 'room' };
  expect(meteredHeat(log(gas), home(electric), null)).toBeNull();
  expect(meteredHeat(log(gas), home(source, source), null)).toBeNull();
  expect(meteredHeat(log(gas, heat), home(source), null)).toBeNull();
  expect(meteredHeat(log(), home(source), null)).toBeNull();
});

test('stretches are counted from the first hour of the log, wherever a run begins', () => {
  const hours = Float64Array.of(1, 3, 5, Number.NaN, 9);
  expect([...meansOver(hours, 2)]).toEqual([2, 2, 5, 5, 9]);
  expect([...meansOver(hours, 2, 1)]).toEqual([1, 4, 4, 9, 9]);
});
