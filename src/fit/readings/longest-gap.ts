import { quantileSorted } from 'simple-statistics';
import type { LoggedSeries } from '../../log/log.ts';

/**
 * Longest time between two readings that is no gap [s]: four times what nine in ten of them keep, from
 * 2 to 8 hours, so that sensors that only report changes are not taken for silent.
 */
export function longestGap({ times, reading }: LoggedSeries): number {
  if (reading === 'state') return LONGEST_STATE;
  if (reading === 'mean') return LONGEST_MEAN;
  const apart = Float64Array.from(times.subarray(1), (time, k) => time - times[k]!).sort();
  const usual = apart.length === 0 ? 0 : quantileSorted([...apart], 0.9);
  return Math.min(LONGEST, Math.max(SHORTEST, 4 * usual));
}

const SHORTEST = 2 * 3600;
const LONGEST = 8 * 3600;
/** A state holds until it changes; a window nobody touched for a fortnight is no gap. */
/** A meter that is read once a day still tells what was used meanwhile. */
const LONGEST_MEAN = 50 * 3600;
const LONGEST_STATE = 14 * 86_400;
