import { expect, test } from 'vitest';
import {
  capped,
  firstAbove,
  level,
  lowestOf,
} from '../../../src/scenario/assemble/level-schedule.ts';
import { weekIn } from '../../../src/scenario/week-value.ts';

const EVERY_DAY = 127;
const JANUARY = 1;
const JULY = 1 << 6;
const night = [{ days: EVERY_DAY, from: 0, to: 360, value: 0 }];
const day = (value: number, months?: number) => ({
  ...{ days: EVERY_DAY, from: 480, to: 1200, value },
  ...(months !== undefined && { months }),
});

test('a cap is no floor: what is lower already stays as low', () => {
  const ends = (base: number) => {
    const week = weekIn(JANUARY, capped(level(base), night, 18));
    return [week[0], week[360]];
  };
  expect([ends(16), ends(20)]).toEqual([
    [16, 16],
    [18, 20],
  ]);
  const programme = { base: 15, spells: [{ days: EVERY_DAY, from: 300, to: 600, value: 21 }] };
  const week = weekIn(JANUARY, capped(programme, night, 18));
  expect([week[0], week[299], week[300], week[359], week[360]]).toEqual([15, 15, 18, 18, 21]);
});

test('the lowest is that of any month, and of the base only where it holds', () => {
  expect(lowestOf({ base: 20, spells: [day(17, JULY)] })).toBe(17);
  const all = { days: EVERY_DAY, from: 0, to: 1440, value: 21 };
  expect(lowestOf({ base: 5, spells: [all] })).toBe(21);
  expect(lowestOf(level(19))).toBe(19);
});

test('one line is above another from the first minute that it is, in any month', () => {
  const heated = { base: 18, spells: [day(22)] };
  expect(firstAbove(heated, level(21))).toEqual({ minute: 480, one: 22, other: 21 });
  expect(firstAbove(heated, level(22))).toBeNull();
  // In July alone it is cooled to as little.
  const cooled = { base: Number.POSITIVE_INFINITY, spells: [day(21, JULY)] };
  expect(firstAbove(heated, cooled)).toEqual({ minute: 480, one: 22, other: 21 });
  expect(firstAbove({ base: 18, spells: [day(22, JANUARY)] }, cooled)).toBeNull();
});
