import { mean, sampleStandardDeviation } from 'simple-statistics';

/** Numbers of a series without its gaps. */
const known = (values: Float64Array): number[] => [...values].filter((x) => !Number.isNaN(x));

/** Mean of what is known; NaN for nothing. */
export function meanOf(values: Float64Array): number {
  const all = known(values);
  return all.length === 0 ? Number.NaN : mean(all);
}

/** Root of the mean square of what is known; NaN for nothing. */
export const rootMeanSquare = (values: Float64Array): number =>
  Math.sqrt(meanOf(values.map((x) => x * x)));

/** Of a sample, by n - 1; 0 for fewer than two. */
export const standardDeviation = (values: readonly number[]): number =>
  values.length < 2 ? 0 : sampleStandardDeviation([...values]);
