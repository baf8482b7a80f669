import { type LocalClock, localDay, toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/time-units.ts';
import { localDays } from './local-days.ts';

/** Least, mean and most of every day; one value a day, no day left out. */
export interface DailyRanges {
  /** Midnight at which the first day begins, by the wall clock. [s local] */
  readonly start: number;
  readonly least: Float32Array;
  readonly mean: Float32Array;
  readonly most: Float32Array;
}

/**
 * The days of an hourly series by the wall clock, from midnight to midnight. The first and the last
 * day are of the hours they have.
 *
 * @param start  instant at which the first hour begins [s UTC]
 */
export function dailyRanges(values: Float32Array, start: number, clock: LocalClock): DailyRanges {
  const dayOf = (hour: number): number => localDay(toLocal(clock, start + hour * SECONDS_PER_HOUR));
  const { first, count: days } = localDays(start, values.length, clock);
  const least = new Float32Array(days).fill(Number.POSITIVE_INFINITY);
  const most = new Float32Array(days).fill(Number.NEGATIVE_INFINITY);
  const sums = new Float64Array(days);
  const hours = new Uint8Array(days);
  values.forEach((value, h) => {
    const day = dayOf(h) - first;
    least[day] = Math.min(least[day]!, value);
    most[day] = Math.max(most[day]!, value);
    sums[day]! += value;
    hours[day]! += 1;
  });
  const mean = Float32Array.from(sums, (sum, day) => sum / hours[day]!);
  return { start: first * SECONDS_PER_DAY, least, mean, most };
}
