import { describe, expect, test } from 'vitest';
import type { WeekSchedule } from '../../src/control/household.ts';
import { momentsOf, valueAt, weekIn } from '../../src/scenario/week-value.ts';

const MONDAY = 1 << 0;
const SUNDAY = 1 << 6;
const EVERY_DAY = 127;
const at = (day: number, hour: number, month = 0) => ({ month, day, minute: 60 * hour });

describe('the value of a weekly schedule', () => {
  const evening: WeekSchedule = {
    base: 16,
    spells: [{ days: MONDAY, from: 18 * 60, to: 26 * 60, value: 21 }],
  };

  test.each([
    ['before it begins', at(0, 17), 16],
    ['from its beginning', at(0, 18), 21],
    ['past midnight, on the day after', at(1, 1), 21],
    ['at its end no more', at(1, 2), 16],
    ['past midnight of its own day', at(0, 1), 16],
    ['on another evening', at(3, 19), 16],
  ])('%s', (_, moment, value) => {
    expect(valueAt(evening, moment)).toBe(value);
  });

  test('of a spell that begins on Sunday goes on into Monday', () => {
    const late = { base: 0, spells: [{ days: SUNDAY, from: 22 * 60, to: 31 * 60, value: 1 }] };
    expect([at(0, 6), at(0, 7), at(6, 22), at(6, 6)].map((m) => valueAt(late, m))).toEqual([
      1, 0, 1, 0,
    ]);
  });

  test('that ends at midnight does not reach the next day', () => {
    const day = { base: 0, spells: [{ days: MONDAY, from: 0, to: 1440, value: 1 }] };
    expect([at(0, 0), at(0, 23), at(1, 0)].map((m) => valueAt(day, m))).toEqual([1, 1, 0]);
  });

  test('holds in its months alone, and the later of two spells counts', () => {
    const spells = [
      { days: EVERY_DAY, from: 0, to: 1440, value: 18, months: 1 << 6 },
      { days: EVERY_DAY, from: 12 * 60, to: 13 * 60, value: 25, months: 1 << 6 },
    ];
    const july = { base: 5, spells };
    expect([at(2, 12, 6), at(2, 13, 6), at(2, 12, 7)].map((m) => valueAt(july, m))).toEqual([
      25, 18, 5,
    ]);
  });
});

describe('a week laid out', () => {
  const january = 1 << 0;
  const spells = [
    { days: MONDAY, from: 18 * 60, to: 26 * 60, value: 21 },
    { days: SUNDAY, from: 22 * 60, to: 31 * 60 + 1, value: 19, months: january },
  ];
  const schedule = { base: 16, spells };

  test('has at every minute what the schedule has at that moment', () => {
    for (const month of [0, 6]) {
      const week = weekIn(1 << month, schedule);
      const at = [...week.keys()].map((m) => ({
        month,
        day: Math.floor(m / 1440),
        minute: m % 1440,
      }));
      expect([...week]).toEqual(at.map((moment) => valueAt(schedule, moment)));
    }
  });

  test('changes at the minute of a turn, past midnights and Sunday too', () => {
    const week = weekIn(january, schedule);
    expect([18 * 60 - 1, 18 * 60, 26 * 60 - 1, 26 * 60].map((m) => week[m])).toEqual([
      ...[16, 21, 21, 16],
    ]);
    expect([7 * 60, 7 * 60 + 1, 6 * 1440 + 22 * 60].map((m) => week[m])).toEqual([19, 16, 19]);
  });

  test('takes the spells of any of its months', () => {
    const july = 1 << 6;
    expect(weekIn(july, schedule)[60]).toBe(16);
    expect(weekIn(july | january, schedule)[60]).toBe(19);
  });
});

test('moments are those at which something changes, of every day of every month', () => {
  const spells = [{ days: EVERY_DAY, from: 18 * 60, to: 26 * 60, value: 21 }];
  const moments = [...momentsOf([{ base: 16, spells }], [75])];
  expect(moments).toHaveLength(12 * 7 * 4);
  expect([...new Set(moments.map(({ minute }) => minute))].toSorted((a, b) => a - b)).toEqual([
    0, 75, 120, 1080,
  ]);
  expect(Math.max(...moments.map(({ month }) => month))).toBe(11);
  expect(Math.max(...moments.map(({ day }) => day))).toBe(6);
  expect([...momentsOf([])].every(({ minute }) => minute === 0)).toBe(true);
});
