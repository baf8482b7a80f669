import { type LocalClock, SECONDS_PER_DAY, toLocal } from '../units/local-clock.ts';

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
    if (toLocal(clock, start + h * 3600) % SECONDS_PER_DAY !== 0) continue;
    let sum = 0;
    for (let k = h; k < h + HOURS_OF_WEEK; k++) sum += temperature[k]!;
    if (sum < lowest) {
      lowest = sum;
      coldest = h;
    }
  }
  return coldest;
}

const HOURS_OF_WEEK = 168;
