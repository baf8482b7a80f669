import type { Stamps } from '../raw-series.ts';
import { sampledToMeans } from './sampled-to-means.ts';

/** How the columns of a file move so that they mean what `Weather` says. */
export interface TimeShift {
  /** Time by which the series starts before the first stamp. [s] */
  readonly earlier: number;
  readonly instant: (values: Float64Array) => Float64Array;
  /** Moves wind directions, which are shifted but never averaged. */
  readonly direction: (values: Float64Array) => Float64Array;
  readonly interval: (values: Float64Array) => Float64Array;
}

/**
 * From what a file's stamps mean to: instants at the start of each step, means from there to the next.
 *
 * Stamps at the end of an interval make the series start one step before the first stamp. A typical
 * year takes the first instant from its own end; an open series holds the first reading back that step.
 * A direction is not averaged: it takes the nearer stamp.
 */
export function alignTimestamps(stamps: Stamps, step: number, periodic: boolean): TimeShift {
  const earlier = stamps.interval === 'ending' ? step : 0;
  const delay = stamps.spotDelay / step;
  const interval =
    stamps.interval === 'instant'
      ? (values: Float64Array) => sampledToMeans(values, delay, periodic)
      : (values: Float64Array) => values;
  const instant = instantShift(stamps, periodic);
  const direction = stamps.airIsMean ? (values: Float64Array) => values : instant;
  return { earlier, instant, direction, interval };
}

function instantShift(stamps: Stamps, periodic: boolean): (values: Float64Array) => Float64Array {
  const previous = (values: Float64Array, k: number) =>
    k > 0 ? values[k - 1]! : values[periodic ? values.length - 1 : 0]!;
  if (stamps.airIsMean && stamps.interval !== 'instant') {
    // Number k is the mean of the step that begins at k: the instant between two steps is their mean.
    return (values) => Float64Array.from(values, (v, k) => (previous(values, k) + v) / 2);
  }
  if (stamps.interval === 'ending') {
    return (values) => Float64Array.from(values, (_, k) => previous(values, k));
  }
  return (values) => values;
}
