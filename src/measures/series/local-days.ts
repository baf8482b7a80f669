import { type LocalClock, localDay, toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_HOUR } from '../../units/time-units.ts';

/** Days of the wall clock that a period touches; the first and the last may be parts of days. */
export interface LocalDays {
  /** Number of the first, counted from 1970-01-01. */
  readonly first: number;
  readonly count: number;
}

/** @param start  of the period [s UTC]  @param hours  its length; 0 touches no day [h] */
export function localDays(start: number, hours: number, clock: LocalClock): LocalDays {
  const dayOf = (utc: number): number => localDay(toLocal(clock, utc));
  const first = dayOf(start);
  return {
    first,
    count: hours > 0 ? dayOf(start + (hours - 1) * SECONDS_PER_HOUR) - first + 1 : 0,
  };
}
