import { type LocalClock, nextJump, offsetAt } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Moment } from '../control-context.ts';

/**
 * Tells the local time in the middle of the step at hand, so that a step belongs to the hour it lies
 * in. [h]
 *
 * The clock is asked for its offset only where it may have jumped since the step before.
 *
 * @param dt  control step [s]
 */
export function createLocalHour(clock: LocalClock, moment: Moment, dt: number): () => number {
  // Instants between which the offset holds, and the offset. [s]
  const held = Float64Array.of(0, 0, 0);
  return () => {
    const utc = moment.utc + dt / 2;
    if (!(utc >= held[FROM]! && utc < held[UNTIL]!)) {
      held[FROM] = utc;
      held[UNTIL] = nextJump(clock, utc);
      held[OFFSET] = offsetAt(clock, utc);
    }
    const local = utc + held[OFFSET]!;
    return (local - Math.floor(local / SECONDS_PER_DAY) * SECONDS_PER_DAY) / 3600;
  };
}

const FROM = 0;
const UNTIL = 1;
const OFFSET = 2;
