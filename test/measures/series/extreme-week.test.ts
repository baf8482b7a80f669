import { describe, expect, test } from 'vitest';
import { beginsDay, extremeWeek } from '../../../src/measures/series/extreme-week.ts';
import { type LocalClock, localDay, toLocal, UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { START } from '../hand-made.ts';

const HOUR = 3600;
const DAY = 24;
const off = (hours: number): LocalClock => ({ from: [0], offset: [hours * HOUR] });
/** 5 °C, and -5 °C in hours 101 to 289. */
const cold = Float32Array.from({ length: DAY * 20 }, (_, h) => (h >= 101 && h < 290 ? -5 : 5));
const coldestWeek = (values: Float32Array, start: number, clock: LocalClock) =>
  extremeWeek(values, start, clock, 'lowest');
const hoursThatBegin = (clock: LocalClock, from: number, count: number) =>
  Array.from({ length: count }, (_, h) => h).filter((h) =>
    beginsDay(START + (from + h) * HOUR, clock),
  );

describe('the coldest week', () => {
  test.each([
    [0, 120],
    [1, 119],
    [-5, 101],
    [12, 108],
    [5.5, 115], // 00:30 there; 18:30 before
    [5.75, 115], // 00:45
    [9.5, 111],
    [-3.5, 100], // 00:30
    [-9.5, 106],
    [12.75, 108],
  ])('where the clock is %d h before UTC it begins at hour %i', (hours, expected) => {
    expect(coldestWeek(cold, START, off(hours))).toBe(expected);
  });

  test('may begin where the clock goes on by half an hour at midnight', () => {
    const summerOfHalfAnHour: LocalClock = {
      from: [0, START + 110 * HOUR],
      offset: [36_000, 37_800],
    };
    // Hour 110 begins at half past midnight then, and the hour before it on the day before.
    expect(coldestWeek(cold, START, summerOfHalfAnHour)).toBe(110);
  });

  test('is the hottest where the highest mean is asked for', () => {
    const warm = cold.map((value) => -value);
    expect(extremeWeek(warm, START, UTC_CLOCK, 'highest')).toBe(120);
    expect(extremeWeek(warm, START, UTC_CLOCK, 'lowest')).toBe(312);
  });

  test('is hour 0 where there are no seven whole days', () => {
    for (const clock of [UTC_CLOCK, off(5.5), off(-3.5)]) {
      expect(coldestWeek(cold.subarray(0, 100), START, clock)).toBe(0);
      expect(coldestWeek(cold.subarray(0, 0), START, clock)).toBe(0);
    }
  });
});

describe('the first hour of a day', () => {
  test.each([0, 1, -7, 5.5, 5.75, -3.5, 12.75])('comes once a day %d h from UTC', (hours) => {
    const clock = off(hours);
    const found = hoursThatBegin(clock, 0, 10 * DAY);
    expect(found).toHaveLength(10);
    for (const h of found) {
      const local = toLocal(clock, START + h * HOUR);
      expect(local - localDay(local) * DAY * HOUR).toBeLessThan(HOUR);
    }
  });

  test('is an hour before a series as well: nothing is taken to come before it', () => {
    expect(beginsDay(START, UTC_CLOCK)).toBe(true);
    expect(beginsDay(START + 18 * HOUR, off(5.5))).toBe(false);
    expect(beginsDay(START + 19 * HOUR, off(5.5))).toBe(true);
  });
});
