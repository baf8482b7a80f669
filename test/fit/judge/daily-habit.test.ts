import { expect, test } from 'vitest';
import { dailyHabit, seenHabit, withoutHabit } from '../../../src/fit/judge/daily-habit.ts';
import { type LocalClock, UTC_CLOCK } from '../../../src/units/local-clock.ts';

const DAYS = 20;
const errors = (of: (hour: number, k: number) => number): Float64Array =>
  Float64Array.from({ length: 24 * DAYS }, (_, k) => of(k % 24, k));
const hours = { from: 0, split: 24 * 15, to: 24 * DAYS };
const HOUR_AHEAD: LocalClock = { from: [0], offset: [3600] };

test('an error that comes every day at seven is found, drawn towards nothing by two days', () => {
  const residuals = errors((hour) => (hour === 7 ? 4 : 0));
  const habit = dailyHabit(residuals, 0, 24 * DAYS, 0, UTC_CLOCK);
  // 20 days of 4 over 22
  expect(habit[7]).toBeCloseTo(80 / 22, 12);
  expect(habit.filter((x) => x !== 0)).toHaveLength(1);
  // by the wall clock it is eight
  expect(dailyHabit(residuals, 0, 24 * DAYS, 0, HOUR_AHEAD)[8]).toBeCloseTo(80 / 22, 12);
});

test('it is used where the last quarter had it too, and what it leaves is told', () => {
  const residuals = errors((hour) => (hour === 7 ? 4 : 0));
  const found = seenHabit({ residuals, before: residuals, ...hours }, 0, UTC_CLOCK);
  expect(found.habit[7]).toBeCloseTo(80 / 22, 12);
  // of 15 days the habit is 60 / 17, which leaves 8 / 17 in one hour of 24
  expect(found.unseen).toBeCloseTo(8 / 17 / Math.sqrt(24), 12);
  expect(found.rmse).toBeCloseTo((4 - 80 / 22) / Math.sqrt(24), 12);
});

test('a habit that was given up before the last quarter is not used, and gaps count nowhere', () => {
  const ended = errors((hour, k) => (hour === 7 && k < hours.split ? 4 : hour === 20 ? 1 : 0));
  const found = seenHabit({ residuals: ended, before: ended, ...hours }, 0, UTC_CLOCK);
  expect(found.habit.every((x) => x === 0)).toBe(true);
  expect(found.unseen).toBeCloseTo(1 / Math.sqrt(24), 12);
  const gap = errors((hour, k) => (k < 48 ? Number.NaN : hour === 7 ? 4 : 0));
  expect(dailyHabit(gap, 0, 24 * DAYS, 0, UTC_CLOCK)[7]).toBeCloseTo((18 * 4) / 20, 12);
});

test('a habit that brings the last quarter nearer by less than a twentieth is not used', () => {
  // 1 every day at seven, and so much up and down from day to day at twenty.
  const beside = (swing: number) =>
    errors((hour, k) =>
      hour === 7 ? 1 : hour === 20 ? swing * (Math.floor(k / 24) % 2 === 0 ? 1 : -1) : 0,
    );
  const used = (swing: number): boolean => {
    const residuals = beside(swing);
    const { habit } = seenHabit({ residuals, before: residuals, ...hours }, 0, UTC_CLOCK);
    return habit[7] !== 0;
  };
  // Squares of five days: 0.0138 + 1.027 c² with it, 1 + c² without: roots 0.91 and 0.98 of it.
  expect(used(2)).toBe(true);
  expect(used(4)).toBe(false);
});

test('where no habit is looked for, errors of the fitted hours stand, and of the quarter not seen those of the search before', () => {
  const residuals = errors((_, k) => (k < hours.split ? 3 : 4));
  const before = errors((_, k) => (k < hours.split ? 1 : 6));
  const found = withoutHabit({ residuals, before, ...hours });
  expect(found.habit).toEqual(new Float64Array(24));
  expect(found.unseen).toBe(6);
  // three quarters of 3, one of 4
  expect(found.rmse).toBeCloseTo(Math.sqrt((3 * 9 + 16) / 4), 12);
});
