import type { LoggedSeries } from '../../log/log.ts';
import { HOURS_PER_DAY, SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { Span } from './span.ts';

/**
 * The stretch that each hour of a log belongs to, of whose heat a meter tells the mean: its day, or, where
 * the meter was read less often, the time from one reading to the next.
 *
 * Days are counted from the first hour, and anew from `withheld` on, so that none is fitted in part and
 * withheld in part.
 *
 * @param withheld  first hour that is withheld
 * @param hourly    means by the hour [W]; made NaN between two such readings where that lies in the span,
 *   before `withheld` or behind it in part alone
 */
export function meterStretches(
  { times }: LoggedSeries,
  { start, hours }: Span,
  withheld: number,
  hourly: Float64Array,
): Int32Array {
  const of = Int32Array.from({ length: hours }, (_, hour) =>
    hour < withheld
      ? Math.floor(hour / HOURS_PER_DAY)
      : Math.ceil(withheld / HOURS_PER_DAY) + Math.floor((hour - withheld) / HOURS_PER_DAY),
  );
  const hourOf = (instant: number): number => Math.round((instant - start) / SECONDS_PER_HOUR);
  for (let k = 1; k < times.length; k++) {
    if (times[k]! - times[k - 1]! <= LONGEST_DAY) continue;
    const [from, to] = [hourOf(times[k - 1]!), hourOf(times[k]!)];
    const whole = from >= 0 && to <= hours && (to <= withheld || from >= withheld);
    const [first, last] = [Math.max(0, from), Math.min(hours, to)];
    if (last <= first) continue;
    of.fill(-k, first, last);
    if (!whole) hourly.fill(Number.NaN, first, last);
  }
  return of;
}

/** Who reads a meter every day does not do so at the same hour. [s] */
export const LONGEST_DAY = 36 * SECONDS_PER_HOUR;
