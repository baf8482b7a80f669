import type { LocalClock } from '../units/local-clock.ts';
import { monthStarts } from '../units/month-starts.ts';

/**
 * Instants at which the months of the wall clock that a period touches end, one for each row of the
 * ledger; the last is the end of the period. [s UTC]
 */
export function monthEnds(
  { start, hours }: { readonly start: number; readonly hours: number },
  clock: LocalClock,
): number[] {
  const end = start + hours * 3600;
  return [...monthStarts(start, end, clock).slice(1), end];
}
