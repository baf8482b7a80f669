import { type LocalClock, localDay, toLocal, weekday } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';

/** Forecasts that ask nothing of a home: what a model has to beat. */
export interface NaiveForecasts {
  /** The mean of what came before. */
  readonly mean: Float64Array;
  /** The mean of what came before at the same local hour of the week. */
  readonly week: Float64Array;
  /** The last day before, over and over. */
  readonly day: Float64Array;
}

/**
 * Forecasts from hour `from` to the end, out of what was known before it.
 *
 * @param observed  hourly, NaN in gaps
 * @param start     instant of the first hour [s UTC]
 */
export function naiveForecasts(
  observed: Float64Array,
  from: number,
  start: number,
  clock: LocalClock,
): NaiveForecasts {
  const hourOfWeek = (k: number): number => {
    const local = toLocal(clock, start + k * 3600);
    return (
      24 * weekday(localDay(local)) +
      Math.floor((((local % SECONDS_PER_DAY) + SECONDS_PER_DAY) % SECONDS_PER_DAY) / 3600)
    );
  };
  const all = createMeans(1);
  const week = createMeans(168);
  const day = new Float64Array(24).fill(Number.NaN);
  for (let k = 0; k < from; k++) {
    const value = observed[k]!;
    if (Number.isNaN(value)) continue;
    all.add(0, value);
    week.add(hourOfWeek(k), value);
    day[hourOfWeek(k) % 24] = value;
  }
  const count = observed.length - from;
  const forecast = (of: (k: number) => number): Float64Array =>
    Float64Array.from({ length: count }, (_, n) => {
      const value = of(from + n);
      return Number.isNaN(value) ? all.mean(0) : value;
    });
  return {
    mean: forecast(() => all.mean(0)),
    week: forecast((k) => week.mean(hourOfWeek(k))),
    day: forecast((k) => day[hourOfWeek(k) % 24]!),
  };
}

function createMeans(size: number) {
  const sums = new Float64Array(size);
  const counts = new Float64Array(size);
  return {
    add: (at: number, value: number) => {
      sums[at] = sums[at]! + value;
      counts[at] = counts[at]! + 1;
    },
    mean: (at: number) => sums[at]! / counts[at]!,
  };
}
