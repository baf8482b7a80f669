import { SECONDS_PER_DAY } from '../../units/time-units.ts';

/**
 * How much to add to an instant so that it falls on the same date and time of day (UTC) within a
 * series that covers a year or more. [s]
 *
 * A 29 February that the series' year lacks becomes its 28th.
 *
 * @param utc    instant outside the series [s UTC]
 * @param start  begin of the series [s UTC]
 */
export function sameDateShift(utc: number, start: number): number {
  const midnight = Math.floor(utc / SECONDS_PER_DAY) * SECONDS_PER_DAY;
  const date = new Date(midnight * 1000);
  const [month, day] = [date.getUTCMonth(), date.getUTCDate()];
  const first = new Date(start * 1000).getUTCFullYear();
  const inYear = (year: number): number => {
    const at = Date.UTC(year, month, day) / 1000;
    return new Date(at * 1000).getUTCMonth() === month ? at : at - SECONDS_PER_DAY;
  };
  const at = inYear(first) >= start ? inYear(first) : inYear(first + 1);
  return at - midnight;
}
