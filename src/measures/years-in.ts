import { HOURS_PER_WEEK } from '../units/time-units.ts';

/**
 * How many years of bills a period stands for: 1 for a calendar year of 365 or 366 days, otherwise
 * its length over the mean calendar year.
 *
 * @param hours  length of the period [h]
 */
export function yearsIn(hours: number): number {
  return hours === YEAR_HOURS || hours === 8784 ? 1 : hours / HOURS_PER_YEAR;
}

/** Whether a period has every season as often as any other: whole years, to the day. @param hours  [h] */
export function isWholeYears(hours: number): boolean {
  const years = Math.round(hours / HOURS_PER_YEAR);
  return years >= 1 && Math.abs(hours - years * HOURS_PER_YEAR) <= 24;
}

/** Whether a period is a year, to the day, or longer. @param hours  [h] */
export const isYearOrMore = (hours: number): boolean => hours >= YEAR_HOURS - 24;

/** Length of a period in weeks. @param hours  [h] */
export const weeksIn = (hours: number): number => hours / HOURS_PER_WEEK;

/** A calendar year of 365 days. [h] */
const YEAR_HOURS = 8760;
const HOURS_PER_YEAR = 8766;
