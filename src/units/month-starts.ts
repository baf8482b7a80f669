import { type LocalClock, toLocal, toUtc } from './local-clock.ts';

/**
 * Instants at which the months of a wall clock that a stretch of time touches begin; the first is at
 * its start or before it. [s UTC]
 *
 * @param start  of the stretch [s UTC]
 * @param end    first instant after it [s UTC]
 */
export function monthStarts(start: number, end: number, clock: LocalClock): number[] {
  const first = new Date(toLocal(clock, start) * 1000);
  const starts: number[] = [];
  for (let q = 0; ; q++) {
    const local = Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + q, 1) / 1000;
    const utc = toUtc(clock, local);
    if (utc >= end) return starts;
    starts.push(utc);
  }
}
