import { expect, test } from 'vitest';
import { hourlyMeans } from '../../../src/fit/readings/hourly-means.ts';
import type { LoggedSeries } from '../../../src/log/log.ts';

const MINUTE = 60;
/** 1000 W from half past midnight on, nothing from half past one on, and the log ends at three. */
const plug: LoggedSeries = {
  ...{ quantity: 'heating electricity', place: 'home', room: null, device: null },
  ...{ reading: 'state', from: 'p.csv', holdsUntil: 180 * MINUTE },
  times: Float64Array.of(30 * MINUTE, 90 * MINUTE),
  values: Float64Array.of(1000, 0),
};

test('power that is told on a change is what a meter reads hour by hour, in whole hours alone', () => {
  const { reading, times, values } = hourlyMeans(plug);
  expect(reading).toBe('mean');
  // The hour from midnight on is known by half, so that the first whole one ends at two.
  expect([...times]).toEqual([60 * MINUTE, 120 * MINUTE, 180 * MINUTE]);
  expect([...values]).toEqual([Number.NaN, 500, 0]);
});

test('what a meter tells stays', () => {
  const meter: LoggedSeries = { ...plug, reading: 'mean' };
  expect(hourlyMeans(meter)).toBe(meter);
});
