/**
 * Means of the latest values of a series, fed one value at a time. Memory is taken once; feeding
 * allocates nothing.
 */
export interface TrailingMean {
  /** Feed the next value; returns the mean of the latest values, as many as there are. */
  add(value: number): number;
  /**
   * Feed the values at `first`, `first + stride` and so on before `end`, and write the mean after
   * each to the same place of `means`: NaN as long as there are fewer than the mean spans.
   */
  addAll(
    values: Float64Array,
    means: Float64Array,
    first: number,
    end: number,
    stride: number,
  ): void;
}

/** @param length  number of values the mean spans, at least 1 */
export function createTrailingMean(length: number): TrailingMean {
  const ring = new Float64Array(length);
  // Numbers that a closure keeps are boxed anew at each change; those in arrays are not.
  const sum = new Float64Array(1);
  const at = new Int32Array(2); // values in the ring, at most its length; where the next one goes

  const one = new Float64Array(1);

  function add(value: number): number {
    one[0] = value;
    addAll(one, one, 0, 1, 1);
    return sum[0]! / at[0]!;
  }

  function addAll(
    values: Float64Array,
    means: Float64Array,
    first: number,
    end: number,
    stride: number,
  ): void {
    let total = sum[0]!;
    let fed = at[0]!;
    let next = at[1]!;
    for (let k = first; k < end; k += stride) {
      const value = values[k]!;
      total += value - ring[next]!;
      ring[next] = value;
      if (fed < length) fed++;
      if (++next === length) {
        // Adding and taking away lets rounding pile up: once round the ring, add up afresh.
        next = 0;
        total = sumOf(ring);
      }
      means[k] = fed === length ? total / fed : Number.NaN;
    }
    sum[0] = total;
    at[0] = fed;
    at[1] = next;
  }

  return { add, addAll };
}

function sumOf(values: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < values.length; k++) sum += values[k]!;
  return sum;
}
