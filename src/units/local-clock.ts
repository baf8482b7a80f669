import { SECONDS_PER_DAY } from './time-units.ts';

/**
 * A local wall clock as plain numbers: from which instant on which offset from UTC is in force.
 *
 * People, tariffs and habits follow the wall clock with its daylight saving; physics follows UTC.
 * Whoever knows the zone's name builds the segments once (see scenario); from then on local time
 * is arithmetic, with no calendar library in the loop.
 */
export interface LocalClock {
  /** Instants from which an offset holds, ascending; the first also covers all earlier time. [s UTC] */
  readonly from: readonly number[];
  /** Offset in force from the same-numbered instant: local = UTC + offset. [s] */
  readonly offset: readonly number[];
}

/** The wall clock that never leaves UTC. */
export const UTC_CLOCK: LocalClock = { from: [0], offset: [0] };

/** Offset of the wall clock from UTC at an instant. [s] */
export function offsetAt({ from, offset }: LocalClock, utc: number): number {
  return offset[lastBefore(from, utc)]!;
}

/** Number of the last segment that begins at an instant or before it; 0 where none does. */
function lastBefore(from: readonly number[], utc: number): number {
  let low = 0;
  let high = from.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (from[middle]! <= utc) low = middle;
    else high = middle;
  }
  return low;
}

/** The first instant after another at which the wall clock jumps; Infinity where it never does. [s UTC] */
export function nextJump({ from }: LocalClock, utc: number): number {
  for (let k = 1; k < from.length; k++) if (from[k]! > utc) return from[k]!;
  return Number.POSITIVE_INFINITY;
}

/** The wall clock's reading at an instant, counted like UTC seconds. [s local] */
export function toLocal(clock: LocalClock, utc: number): number {
  return utc + offsetAt(clock, utc);
}

/**
 * The instant at which the wall clock shows a reading.
 *
 * A reading that daylight saving skips means the moment the clocks jump; one that it repeats means
 * the first of the two.
 *
 * @param local  reading of the wall clock, counted like UTC seconds [s local]
 * @returns instant [s UTC]
 */
export function toUtc(clock: LocalClock, local: number): number {
  const { from, offset } = clock;
  const n = from.length;
  // Segments that end more than two days before cannot be meant: no clock is that far from UTC.
  for (let k = lastBefore(from, local - 2 * SECONDS_PER_DAY); k < n; k++) {
    const end = k + 1 < n ? from[k + 1]! : Number.POSITIVE_INFINITY;
    const utc = local - offset[k]!;
    if (utc < end) return k === 0 ? utc : Math.max(utc, from[k]!);
  }
  throw new RangeError('toUtc: the clock has no segments');
}

/** Number of the local day that a wall-clock reading falls in, counted from 1970-01-01. */
export function localDay(local: number): number {
  return Math.floor(local / SECONDS_PER_DAY);
}

/** Day of the week of a local day number, Monday = 0 to Sunday = 6. */
export function weekday(day: number): number {
  return (((day + THURSDAY) % 7) + 7) % 7;
}

const THURSDAY = 3; // 1970-01-01 was a Thursday
