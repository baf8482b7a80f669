import type { LoggedSeries } from '../../log/log.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';

/**
 * A meter less a steady share of its mean, day by day: all readings of a day by the same part, for what heats
 * water is in those in which the heating comes and goes, and not in those in which it rests.
 *
 * Days are counted from where the first known reading begins. What is left of a day at the end goes with
 * the day before it: by itself a few hours in which the heating rests would have nothing to take the share
 * of, and the whole would keep too much.
 *
 * @param meter  means, each over the time before its stamp
 * @param share  of the mean of all of it [-], 0 to 1
 */
export function lessSteady(meter: LoggedSeries, share: number): LoggedSeries {
  const { times, values } = meter;
  if (times.length < 2) return meter;
  const lasts = (k: number): number => times[k]! - (times[k - 1] ?? 2 * times[0]! - times[1]!);
  const known = (k: number): boolean => Number.isFinite(values[k]);
  const first = values.findIndex((_, k) => known(k));
  const last = values.findLastIndex((_, k) => known(k));
  const begin = times[first]! - lasts(first);
  const days = Math.max(1, Math.floor((times[last]! - begin) / SECONDS_PER_DAY + ROUNDING));
  const day = (k: number): number =>
    Math.min(days, Math.ceil((times[k]! - begin) / SECONDS_PER_DAY - ROUNDING));

  const all = { drawn: 0, time: 0 };
  const ofDay = new Map<number, typeof all>();
  values.forEach((power, k) => {
    if (!known(k)) return;
    const own = ofDay.get(day(k)) ?? { drawn: 0, time: 0 };
    for (const sum of [all, own]) {
      sum.drawn += power * lasts(k);
      sum.time += lasts(k);
    }
    ofDay.set(day(k), own);
  });
  const steady = (share * all.drawn) / all.time;
  const left = (k: number): number => {
    const { drawn, time } = ofDay.get(day(k)) ?? { drawn: 0, time: 0 };
    return drawn > 0 ? Math.max(0, 1 - (steady * time) / drawn) : 0;
  };
  return { ...meter, values: values.map((power, k) => power * left(k)) };
}

const ROUNDING = 1e-9; // of a day
