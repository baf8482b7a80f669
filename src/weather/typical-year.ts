import { clockSeconds } from '../units/clock-seconds.ts';

/** The year that typical years are dated in: not a leap year; its 1 January is a Sunday. */
export const TYPICAL_YEAR = 2023;

/** A stamp that a line gives by calendar parts, on the clock of the file. */
export interface CalendarStamp {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

/** Whether the months come from several years. */
export function fromSeveralYears(years: Iterable<number>): boolean {
  return new Set(years).size > 1;
}

/** Seconds of a stamp on the file's clock, in the typical year where asked; null where no calendar has it. */
export function stampSeconds(stamp: CalendarStamp, typical: boolean): number | null {
  const year = typical ? TYPICAL_YEAR : stamp.year;
  return clockSeconds(year, stamp.month, stamp.day, stamp.hour, stamp.minute);
}
