import { SECONDS_PER_HOUR } from '../../units/time-units.ts';
import { intervalsOf } from '../intervals.ts';
import type { LoggedSeries } from '../log.ts';
import { longestGap } from '../longest-gap.ts';
import { middleOf } from '../middle-of.ts';
import { meanInTime } from '../onto-steps.ts';

/** What a series is like, in figures. */
export interface SeriesFacts {
  readonly readings: number;
  /** First and last reading. [s UTC] */
  readonly start: number;
  readonly end: number;
  /** Time that most often lies between two readings: their median. [s] */
  readonly every: number;
  /** Whether readings come as things change and not by the clock. */
  readonly onChange: boolean;
  /** Stretches without a reading that are longer than three usual ones and an hour. */
  readonly gaps: number;
  readonly longestGap: number;
  /** What counts as one. [s] */
  readonly gapsFrom: number;
  /** Share of the span that lies in gaps. [-] */
  readonly inGaps: number;
  /** Longest time with one and the same value in 24 readings or more, and when it began. [s] */
  readonly stuckFor: number;
  readonly stuckFrom: number;
  readonly lowest: number;
  readonly mean: number;
  readonly highest: number;
}

export function seriesFacts(series: LoggedSeries): SeriesFacts {
  const { times, values, reading } = series;
  const n = times.length;
  const { apart, every, onChange } = intervalsOf(series);
  const gap = Math.max(3 * every, SECONDS_PER_HOUR);
  let [gaps, longest, lost] = [0, 0, 0];
  if (reading !== 'state') {
    for (const a of apart) {
      if (a > longest) longest = a;
      if (a <= gap) continue;
      gaps++;
      lost += a;
    }
  }
  const span = n > 0 ? times[n - 1]! - times[0]! : 0;
  return {
    ...{ readings: n, start: times[0]!, end: times[n - 1]!, every, onChange, gaps },
    ...{ longestGap: longest, gapsFrom: gap },
    inGaps: span > 0 ? lost / span : 0,
    ...stuck(times, values, gap),
    ...extremes(values, meanInTime(series, longestGap(series))),
  };
}

/** @param inTime  mean in which each moment counts alike, NaN where readings stand alone */
function extremes(values: Float64Array, inTime: number) {
  let [lowest, highest, sum, count] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, 0];
  for (const value of values) {
    if (Number.isNaN(value)) continue;
    if (value < lowest) lowest = value;
    if (value > highest) highest = value;
    sum += value;
    count++;
  }
  return { lowest, mean: Number.isNaN(inTime) ? sum / count : inTime, highest };
}

/** Longest stretch of one value, gaps left out. */
function stuck(times: Float64Array, values: Float64Array, gap: number) {
  let [stuckFor, stuckFrom, from] = [0, Number.NaN, 0];
  for (let k = 1; k <= values.length; k++) {
    const goesOn =
      k < values.length && values[k] === values[from] && times[k]! - times[k - 1]! <= gap;
    if (goesOn) continue;
    const length = times[k - 1]! - times[from]!;
    if (k - from >= MANY && length > stuckFor) [stuckFor, stuckFrom] = [length, times[from]!];
    from = k;
  }
  return { stuckFor, stuckFrom };
}

/** How far numbers usually are from their middle: the median distance. */
export const usualDistance = (values: Float64Array): number => {
  const middle = middleOf(values);
  return middleOf(values.map((value) => Math.abs(value - middle)));
};

const MANY = 24;
