import { type LocalClock, offsetAt, toLocal, toUtc } from '../../units/local-clock.ts';

/** Instants of readings of a wall clock, and what they tell of that clock. */
export interface WallInstants {
  /** [s UTC] */
  readonly utc: Float64Array;
  /** Readings at times that the clock skips, and the first of them [s of the clock]; NaN for none. */
  readonly skipped: number;
  readonly firstSkipped: number;
  /** Hours that the readings run through twice, as where summer time ends. */
  readonly repeated: number;
}

/**
 * Instants at which a clock showed some readings, in the order in which they were written down.
 *
 * Of an hour that the clock shows twice the first is meant, unless that would go back behind the
 * reading before. A reading that the clock never shows becomes the instant of the jump.
 */
export function wallToUtc(clock: LocalClock, readings: Float64Array): WallInstants {
  const utc = new Float64Array(readings.length);
  let skipped = 0;
  let firstSkipped = Number.NaN;
  let repeated = 0;
  let before = Number.NEGATIVE_INFINITY;
  let second = false;
  for (let k = 0; k < readings.length; k++) {
    const shown = readings[k]!;
    let at = toUtc(clock, shown);
    if (toLocal(clock, at) !== shown) {
      if (skipped++ === 0) firstSkipped = shown;
    }
    const again = shown - offsetAt(clock, at + LONGEST_JUMP);
    const isTwice = again > at && toLocal(clock, again) === shown;
    const late = isTwice && at <= before && again > before;
    if (late) at = again;
    if (late && !second) repeated++;
    second = late;
    utc[k] = at;
    before = at;
  }
  return { utc, skipped, firstSkipped, repeated };
}

/** A clock that stands at the winter offset of another around an instant and never changes. */
export function winterClock(clock: LocalClock, around: number): LocalClock {
  // Summer time may be on at both ends of half a year, but not at all four of a year's quarters.
  const quarters = [0, 91, 182, 273].map((days) => offsetAt(clock, around + days * 86_400));
  return { from: [0], offset: [Math.min(...quarters)] };
}

/** Longer than a clock ever jumps. [s] */
const LONGEST_JUMP = 3 * 3600;
