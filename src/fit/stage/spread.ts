import { dot, information, solveSymmetric } from '../search/posterior.ts';
import { standardDeviation } from '../statistics/misfit.ts';

/**
 * Standard deviation of each parameter by the spread between sub-periods, which shows where the
 * model's form is wrong. [prior standard deviations]
 *
 * Each sub-period moves the minimum by one linear step with its share of the prior; the spread of
 * these places over the root of their number is the standard deviation of their mean.
 *
 * @param columns    derivatives of the weighted values, channels one behind the other
 * @param residuals  weighted, likewise
 * @param at         the minimum
 * @param channels   how many series lie one behind the other
 */
export function spreadOf(
  columns: readonly Float64Array[],
  residuals: Float64Array,
  at: readonly number[],
  channels: number,
): number[] {
  const length = residuals.length / channels;
  const places = Array.from({ length: PERIODS }, (_, p) => {
    const from = Math.floor((p * length) / PERIODS);
    const to = Math.floor(((p + 1) * length) / PERIODS);
    const within = (all: Float64Array): Float64Array =>
      all.filter((_, k) => k % length >= from && k % length < to);
    const own = columns.map(within);
    const left = within(residuals);
    const right = own.map((column, i) => dot(column, left) - at[i]! / PERIODS);
    return solveSymmetric(information(own, 1 / PERIODS), right);
  });
  return at.map((_, i) => standardDeviation(places.map((place) => place[i]!)) / Math.sqrt(PERIODS));
}

/** Sub-periods. */
const PERIODS = 4;
