import { expect, test } from 'vitest';
import { seasonOf } from '../../../src/engine/outdoors/season.ts';
import { NEW_YEAR } from '../homes.ts';
import { lastDays } from '../short-weather.ts';

const DAY = 86_400;

/** Weather that is a pure annual cycle, coldest on 20 January. */
function cycle(days: number, before: number) {
  const start = NEW_YEAR - before * DAY;
  const cold = NEW_YEAR + 19 * DAY;
  const turn = (utc: number): number => Math.cos((2 * Math.PI * (utc - cold)) / (365.25 * DAY));
  return lastDays({ temperature: (t) => 10 - 8 * turn(start + t) }, days, 3600, before);
}

test.each([
  ['a year', 365, 0],
  ['a year and a half', 548, 0],
  ['a year and a half from summer on', 548, 184],
  ['eleven months', 335, 0],
])('a file of %s has the cycle that it was made of', (_, days, before) => {
  const { mean, amplitude, coldest } = seasonOf(cycle(days, before));
  expect(mean).toBeCloseTo(10, 6);
  expect(amplitude).toBeCloseTo(8, 6);
  // Days are numbered anew at New Year, a quarter of a day sooner or later.
  expect(Math.abs(coldest - 20)).toBeLessThan(0.3);
});

test('less than nine tenths of a year have a mean and no cycle', () => {
  const { mean, amplitude } = seasonOf(cycle(320, 0));
  expect(amplitude).toBe(0);
  // From 1 January to 16 November: warmer than the year by what the cold weeks left out are below 10 °C,
  // 8 K times the mean of the cosine over 45.25 days about 9 December, shared out over 320 days.
  expect(mean).toBeCloseTo(10 + (8 * 45.25 * 0.73) / 320, 1);
});
