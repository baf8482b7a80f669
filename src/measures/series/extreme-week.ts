import { type LocalClock, localDay, toLocal } from '../../units/local-clock.ts';
import { HOURS_PER_WEEK, SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/time-units.ts';

/**
 * Number of the hour at which the seven days with the lowest mean begin, or with the highest, from
 * midnight to midnight by the wall clock; 0 where the series has no seven whole days.
 *
 * @param values  hour by hour, such as the temperature outdoors
 * @param start  instant at which the first hour begins [s UTC]
 */
export function extremeWeek(
  values: Float32Array,
  start: number,
  clock: LocalClock,
  end: 'lowest' | 'highest',
): number {
  const sign = end === 'lowest' ? 1 : -1;
  let found = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let h = 0; h + HOURS_PER_WEEK <= values.length; h++) {
    if (!beginsDay(start + h * SECONDS_PER_HOUR, clock)) continue;
    let sum = 0;
    for (let k = h; k < h + HOURS_PER_WEEK; k++) sum += sign * values[k]!;
    if (sum < least) {
      least = sum;
      found = h;
    }
  }
  return found;
}

/**
 * Whether an hour of a series is the first of a day by the wall clock: the one that begins at
 * midnight or, where the clock is off the whole hour and midnight falls within one, the one after it.
 *
 * @param begin  instant at which the hour begins [s UTC]
 */
export function beginsDay(begin: number, clock: LocalClock): boolean {
  const local = toLocal(clock, begin);
  if (local % SECONDS_PER_HOUR === 0) return local % SECONDS_PER_DAY === 0;
  return localDay(local) !== localDay(toLocal(clock, begin - SECONDS_PER_HOUR));
}
