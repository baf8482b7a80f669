import { weekday } from './local-clock.ts';
import { monthAndDay } from './month-and-day.ts';

/** Days of the week and months of what recurs; absent means all. */
interface Recurring {
  /** Bit d is set for the days on which it starts, Monday = bit 0. */
  readonly days?: number;
  /** Bit m is set for the months in which it starts, January = bit 0. */
  readonly months?: number;
}

/**
 * Whether something starts on a local day.
 *
 * @param date   local day number
 * @param spent  local day number whose weekday the day is spent like
 */
export function startsOn({ days, months }: Recurring, date: number, spent = date): boolean {
  if (days !== undefined && (days & (1 << weekday(spent))) === 0) return false;
  return months === undefined || (months & (1 << (monthAndDay(date).month - 1))) !== 0;
}
