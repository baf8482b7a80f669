import { expect, test } from 'vitest';
import { isWholeYears, isYearOrMore, yearsIn } from '../../src/measures/years-in.ts';

const DAY = 24;

test('a year may lack a day, and be as long as it likes', () => {
  expect([363, 364, 365, 366, 731].map((days) => isYearOrMore(days * DAY))).toEqual([
    ...[false, true, true, true, true],
  ]);
  expect(isYearOrMore(364 * DAY - 1)).toBe(false);
});

test('whole years are whole to the day', () => {
  // From 364.25 to 366.25 days, and around twice 365.25.
  const days = [0, 364, 365, 366, 367, 400, 729, 730, 731, 732];
  expect(days.filter((each) => isWholeYears(each * DAY))).toEqual([365, 366, 730, 731]);
});

test('either calendar year is one year of bills', () => {
  expect([8760, 8784, 8766, 4383].map(yearsIn)).toEqual([1, 1, 1, 0.5]);
});
