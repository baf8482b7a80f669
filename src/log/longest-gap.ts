import type { LoggedSeries } from './log.ts';
import { factsOf } from './quantities.ts';

/**
 * Longest time between two readings that is no gap [s]: four times what nine in ten of them keep, from
 * 2 to 8 hours, so that sensors that only report changes are not taken for silent.
 */
export function longestGap({ times, reading, quantity }: LoggedSeries): number {
  if (reading === 'state') return isPower(quantity) ? Number.POSITIVE_INFINITY : LONGEST_STATE;
  if (reading === 'mean') return LONGEST_MEAN;
  const apart = Float64Array.from(times.subarray(1), (time, k) => time - times[k]!).sort();
  const at = apart.length * NINE_IN_TEN;
  const above = apart[Math.floor(at)] ?? 0;
  const usual = at % 1 === 0 ? (above + (apart[at - 1] ?? above)) / 2 : above;
  return Math.min(LONGEST, Math.max(SHORTEST, 4 * usual));
}

/** A heater that is off for weeks has nothing to report, and no line leads from 0 to what it draws next. */
const isPower = (quantity: string): boolean => factsOf(quantity)?.unit === 'W';

const NINE_IN_TEN = 0.9;
const SHORTEST = 2 * 3600;
const LONGEST = 8 * 3600;
/** A meter that is read once a day still tells what was used meanwhile. */
const LONGEST_MEAN = 50 * 3600;
/** A state holds until it changes; a window nobody touched for a fortnight is no gap. */
export const LONGEST_STATE = 14 * 86_400;
