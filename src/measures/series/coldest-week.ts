import { type LocalClock, localDay, SECONDS_PER_DAY, toLocal } from '../../units/local-clock.ts';

/**
 * Number of the hour at which the coldest seven days begin, from midnight to midnight by the wall
 * clock; 0 where the series has no seven whole days.
 *
 * @param temperature  outdoors, hour by hour [°C]
 * @param start  instant at which the first hour begins [s UTC]
 */
export function coldestWeek(temperature: Float32Array, start: number, clock: LocalClock): number {
  let coldest = 0;
  let lowest = Number.POSITIVE_INFINITY;
  for (let h = 0; h + HOURS_OF_WEEK <= temperature.length; h++) {
    if (!beginsDay(start + h * SECONDS_PER_HOUR, clock)) continue;
    let sum = 0;
    for (let k = h; k < h + HOURS_OF_WEEK; k++) sum += temperature[k]!;
    if (sum < lowest) {
      lowest = sum;
      coldest = h;
    }
  }
  return coldest;
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

const SECONDS_PER_HOUR = 3600;
const HOURS_OF_WEEK = 168;
