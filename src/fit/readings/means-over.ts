/**
 * Each hour that is known with the mean of all of its stretch that are; so a day that a log has in part
 * is compared with the same part of a run. NaN for other hours.
 *
 * @param first  number of the first hour
 */
export function meansOver(hourly: Float64Array, { of, known }: Stretches, first = 0): Float64Array {
  const means = new Map<number, { sum: number; count: number }>();
  const counts = (k: number): boolean => Number.isFinite(known[k + first]);
  hourly.forEach((value, k) => {
    if (!counts(k)) return;
    const stretch = of[k + first]!;
    const { sum, count } = means.get(stretch) ?? { sum: 0, count: 0 };
    means.set(stretch, { sum: sum + value, count: count + 1 });
  });
  return hourly.map((_, k) => {
    const mean = means.get(of[k + first]!);
    return mean === undefined || !counts(k) ? Number.NaN : mean.sum / mean.count;
  });
}

/** Hours of which only means count. */
export interface Stretches {
  /** Of each hour of the log the number of its stretch. */
  readonly of: Int32Array;
  /** Hourly means as they were logged; hours in which this is NaN belong to no mean. */
  readonly known: Float64Array;
}
