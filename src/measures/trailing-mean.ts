/**
 * Means of the latest values of several series, fed one value at a time. Memory is taken once;
 * feeding allocates nothing.
 */
export interface TrailingMean {
  /** Feed the next value of series i; returns the mean of its latest values, as many as there are. */
  add(i: number, value: number): number;
  /** Whether series i has been fed at least as many values as the mean spans. */
  full(i: number): boolean;
}

/**
 * @param length  number of values the mean spans, at least 1
 * @param series  number of series kept side by side
 */
export function createTrailingMean(length: number, series: number): TrailingMean {
  const ring = new Float64Array(length * series);
  const sum = new Float64Array(series);
  const fed = new Int32Array(series); // values in the ring, at most its length
  const next = new Int32Array(series); // where the next one goes

  function add(i: number, value: number): number {
    const at = next[i]!;
    const first = i * length;
    sum[i] = sum[i]! + value - ring[first + at]!;
    ring[first + at] = value;
    if (fed[i]! < length) fed[i] = fed[i]! + 1;
    next[i] = at + 1;
    // Adding and taking away lets rounding pile up: once round the ring, add up afresh.
    if (at === length - 1) {
      next[i] = 0;
      let fresh = 0;
      for (let k = first; k < first + length; k++) fresh += ring[k]!;
      sum[i] = fresh;
    }
    return sum[i]! / fed[i]!;
  }

  return { add, full: (i) => fed[i] === length };
}
