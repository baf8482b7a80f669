import type { Weather } from '../weather.ts';

/** One number a day, whole days of the place only. */
export interface DailyTemperatures {
  /** Start of each day. [s UTC] */
  readonly start: Float64Array;
  /** Mean of the day, straight lines between instants. [°C] */
  readonly mean: Float64Array;
  /** [°C] */
  readonly highest: Float64Array;
  /** [°C] */
  readonly lowest: Float64Array;
}

/**
 * Daily mean, highest and lowest temperature, days running from midnight to midnight of the clock that
 * the place's longitude gives in whole hours.
 *
 * A series that closes on itself gives all its days, the one over its end too; of any other, the
 * broken days at its ends are left away; one that ends before its first midnight gives none.
 */
export function dailyTemperatures(weather: Weather): DailyTemperatures {
  const { temperature, start, step, count, periodic, longitude } = weather;
  const perDay = 86_400 / step;
  const offset = Math.round(longitude / 15) * 3600;
  const intoDay = (((start + offset) % 86_400) + 86_400) % 86_400;
  const first = Math.ceil(((86_400 - intoDay) % 86_400) / step);
  const days = Math.max(0, Math.floor((periodic ? count : count - first) / perDay));
  const found = {
    start: new Float64Array(days),
    mean: new Float64Array(days),
    highest: new Float64Array(days).fill(Number.NEGATIVE_INFINITY),
    lowest: new Float64Array(days).fill(Number.POSITIVE_INFINITY),
  };
  const at = (k: number) => temperature[periodic ? k % count : Math.min(k, count - 1)]!;
  for (let day = 0; day < days; day++) {
    const from = first + Math.round(day * perDay);
    const to = first + Math.round((day + 1) * perDay);
    found.start[day] = start + from * step;
    for (let k = from; k < to; k++) {
      found.mean[day]! += (at(k) + at(k + 1)) / 2 / (to - from);
      found.highest[day] = Math.max(found.highest[day]!, at(k));
      found.lowest[day] = Math.min(found.lowest[day]!, at(k));
    }
  }
  return found;
}
