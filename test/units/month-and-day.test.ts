import { expect, test } from 'vitest';
import { monthAndDay } from '../../src/units/month-and-day.ts';

test('calendar days are those of the Gregorian calendar', () => {
  const wrong: number[] = [];
  // Days of 1900 to 2100, which has leap years, a century that is one and two that are none.
  for (let date = Date.UTC(1900, 0, 1) / DAY; date < Date.UTC(2101, 0, 1) / DAY; date++) {
    const at = new Date(date * DAY);
    const { month, day } = monthAndDay(date);
    if (month !== at.getUTCMonth() + 1 || day !== at.getUTCDate()) wrong.push(date);
  }
  expect(wrong).toEqual([]);
});

const DAY = 86_400_000; // [ms]
