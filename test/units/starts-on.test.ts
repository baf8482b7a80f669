import { expect, test } from 'vitest';
import { startsOn } from '../../src/units/starts-on.ts';

const day = (month: number, date: number): number => Date.UTC(2024, month - 1, date) / 86_400_000;
const [WEEKENDS, FEBRUARY] = [0b1100000, 0b10];

test('days of the week and months both have to hold; what has none starts always', () => {
  // 2024-02-03 is a Saturday, 2024-02-29 a Thursday.
  const of = (recurring: { days?: number; months?: number }) =>
    [day(2, 3), day(2, 29), day(3, 2)].map((date) => startsOn(recurring, date));
  expect(of({})).toEqual([true, true, true]);
  expect(of({ days: WEEKENDS })).toEqual([true, false, true]);
  expect(of({ months: FEBRUARY })).toEqual([true, true, false]);
  expect(of({ days: WEEKENDS, months: FEBRUARY })).toEqual([true, false, false]);
});

test('a day that is spent like another one has the weekday of that and its own month', () => {
  const weekend = { days: WEEKENDS, months: FEBRUARY };
  // Thursday the 29th of February, like the Saturday after it.
  expect(startsOn(weekend, day(2, 29), day(3, 2))).toBe(true);
  // Friday the 1st of March, like the Saturday before it.
  expect(startsOn(weekend, day(3, 1), day(2, 24))).toBe(false);
});
