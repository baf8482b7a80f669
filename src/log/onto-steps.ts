import type { LoggedSeries } from './log.ts';

/** Even steps that start at an instant. */
export interface EvenSteps {
  /** [s UTC] */
  readonly start: number;
  /** [s] */
  readonly step: number;
  readonly count: number;
}

/**
 * Mean of a series over each of some even steps; NaN where less than half of a step is known.
 *
 * Readings at instants are joined by straight lines, states and means hold as long as they say.
 * Nothing is known between two readings that are further apart than the longest gap, nor before the
 * first and after the last, unless a state holds on: gaps are never filled.
 *
 * @param longestGap  longest time that one reading may stand for what lies between [s]
 */
export function meansOverSteps(
  series: LoggedSeries,
  { start, step, count }: EvenSteps,
  longestGap: number,
): Float64Array {
  const { sums, known } = sumsOverSteps(series, { start, step, count }, longestGap);
  return sums.map((sum, n) =>
    known[n]! >= (step * (1 - ROUNDING)) / 2 ? sum / known[n]! : Number.NaN,
  );
}

/**
 * Mean of all that a series tells by the rules of `meansOverSteps`, each moment counting alike; NaN where that
 * is nothing.
 */
export function meanInTime(series: LoggedSeries, longestGap: number): number {
  const { times, holdsUntil } = series;
  const [start, end] = [times[0]!, holdsUntil ?? times.at(-1)!];
  const { sums, known } = sumsOverSteps(series, { start, step: end - start, count: 1 }, longestGap);
  return sums[0]! / known[0]!;
}

/** What is known of a series over each of some even steps, times its duration, and how long that is. */
function sumsOverSteps(
  series: LoggedSeries,
  { start, step, count }: EvenSteps,
  longestGap: number,
): { readonly sums: Float64Array; readonly known: Float64Array } {
  const sums = new Float64Array(count);
  const known = new Float64Array(count);
  const { times } = series;
  for (let k = Math.max(0, before(times, start)); k < times.length; k++) {
    if (times[k]! >= start + count * step) break;
    if (isKnown(series, k, longestGap)) addPiece(series, k, { start, step, count }, sums, known);
  }
  return { sums, known };
}

/**
 * Value of a series at each of some even instants, `start`, `start + step` and on; NaN where it is
 * not known by the rules of `meansOverSteps`. A mean counts at every instant of its interval.
 *
 * @param longestGap  longest time that one reading may stand for what lies between [s]
 */
export function valuesAtInstants(
  series: LoggedSeries,
  { start, step, count }: EvenSteps,
  longestGap: number,
): Float64Array {
  const { times, values } = series;
  const found = new Float64Array(count).fill(Number.NaN);
  let k = Math.max(0, before(times, start));
  for (let n = 0; n < count; n++) {
    const at = start + n * step;
    while (k + 1 < times.length && times[k + 1]! <= at) k++;
    if (times[k] === at && series.reading !== 'mean') found[n] = values[k]!;
    else if (times[k]! <= at && at <= endOf(series, k) && isKnown(series, k, longestGap)) {
      found[n] = valueAt(series, k, at);
    }
  }
  return found;
}

/** Whether the series says something of all the time between reading k and the next. */
function isKnown(series: LoggedSeries, k: number, longestGap: number): boolean {
  const { times, values, reading } = series;
  if (endOf(series, k) - times[k]! > longestGap) return false;
  if (k + 1 >= times.length) return reading === 'state' && !Number.isNaN(values[k]!);
  const here = reading === 'mean' ? values[k + 1]! : values[k]!;
  return !Number.isNaN(here) && !(reading === 'instant' && Number.isNaN(values[k + 1]!));
}

/** When what reading k says ends at the latest: with the next, of the last where its state ends. [s] */
function endOf({ times, holdsUntil }: LoggedSeries, k: number): number {
  return times[k + 1] ?? holdsUntil ?? times[k]!;
}

/** The value at an instant between reading k and the next. */
function valueAt({ times, values, reading }: LoggedSeries, k: number, at: number): number {
  if (reading === 'mean') return values[k + 1]!;
  if (reading === 'state') return values[k]!;
  const share = (at - times[k]!) / (times[k + 1]! - times[k]!);
  return values[k]! + share * (values[k + 1]! - values[k]!);
}

/** Adds what lies between reading k and the next to the steps that it touches. */
function addPiece(
  series: LoggedSeries,
  k: number,
  { start, step, count }: EvenSteps,
  sums: Float64Array,
  known: Float64Array,
): void {
  const end = Math.min(endOf(series, k), start + count * step);
  let from = Math.max(series.times[k]!, start);
  while (from < end) {
    const n = Math.min(count - 1, Math.floor((from - start) / step));
    const to = Math.min(end, start + (n + 1) * step);
    // On a straight line the mean of a piece is its value in the middle.
    sums[n] = sums[n]! + (to - from) * valueAt(series, k, (from + to) / 2);
    known[n] = known[n]! + to - from;
    from = to;
  }
}

/** Number of the last time at or before an instant, -1 where there is none. */
function before(times: Float64Array, instant: number): number {
  let low = -1;
  let high = times.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (times[middle]! <= instant) low = middle;
    else high = middle;
  }
  return low;
}

const ROUNDING = 1e-9;
