import { expect, test } from 'vitest';
import { judge } from '../../../src/fit/judge/judgement.ts';
import { naiveForecasts } from '../../../src/fit/judge/naive-forecasts.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';

const MONDAY = Date.UTC(2024, 0, 1) / 1000;
const DAY = 24;

test('mean, hour of the week and last day, by hand', () => {
  // two weeks that count their days, 0 to 13; the third is foreseen
  const observed = Float64Array.from({ length: 15 * DAY }, (_, k) => Math.floor(k / DAY));
  const found = naiveForecasts(observed, 14 * DAY, MONDAY, UTC_CLOCK);
  expect(found.mean[0]).toBeCloseTo(6.5, 12);
  expect(found.week[5]).toBe(3.5); // Mondays were 0 and 7
  expect(found.day[23]).toBe(13);
});

test('hours of the week are those of the wall clock, past a change of it', () => {
  // clocks go forward an hour at the end of the first week; warm at six by the wall clock
  const clock = { from: [0, MONDAY + 7 * DAY * 3600], offset: [0, 3600] };
  const warm = (k: number) => (k < 7 * DAY ? k % DAY === 6 : k % DAY === 5);
  const observed = Float64Array.from({ length: 15 * DAY }, (_, k) => (warm(k) ? 1 : 0));
  const { week, day } = naiveForecasts(observed, 14 * DAY, MONDAY, clock);
  expect([week[4], week[5], week[6]]).toEqual([0, 1, 0]);
  expect([day[4], day[5], day[6]]).toEqual([0, 1, 0]);
});

test('gaps teach nothing, and an hour that was never seen takes the mean', () => {
  const observed = new Float64Array(3 * DAY).fill(Number.NaN);
  observed[2] = 4;
  observed[DAY + 2] = 6;
  const found = naiveForecasts(observed, 2 * DAY, MONDAY, UTC_CLOCK);
  expect([found.mean[0], found.day[2], found.day[3], found.week[2]]).toEqual([5, 6, 5, 5]);
});

test('a judgement, by hand', () => {
  // guesses of 0 are 2 off, the model 1 off in one hour of four and the rest right
  const observed = Float64Array.of(0, 0, 2, 2, Number.NaN, 2, 2);
  const found = judge(observed, Float64Array.of(2, 1, 7, 2, 2), 2, 0.4, MONDAY, UTC_CLOCK);
  expect(found).toMatchObject({ hours: 4, rmse: 0.5, bias: -0.25, inside: 0.75 });
  expect(found.guesses).toEqual({ mean: 2, week: 2, day: 2 });
  expect(found.skill).toBe(0.75);
});
