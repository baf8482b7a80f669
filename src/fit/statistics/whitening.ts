import type { ErrorForm } from './error-form.ts';
import { restarted } from './restarted.ts';

/**
 * How residuals of one channel are weighted: their lag-one correlation and standard deviation.
 * Residuals an hour apart follow e[k] = rho e[k-1] + innovation.
 */
export interface Autocorrelation {
  /** Correlation of neighbours. [-] */
  readonly rho: number;
  /** Standard deviation of the residuals themselves. [unit of the channel] */
  readonly sd: number;
}

/**
 * Lag-one correlation and standard deviation of residuals about zero, over pairs without a gap.
 *
 * About zero, because a lasting bias is an error too: taking the mean off would hide it.
 *
 * @param residuals  NaN where there is none
 * @param floor  least standard deviation: what the sensor itself is good for
 * @param form   `restarted` takes them as they would be after restarts
 */
export function autocorrelationOf(
  residuals: Float64Array,
  floor: number,
  form: ErrorForm = 'free run',
): Autocorrelation {
  if (form === 'restarted') return autocorrelationOf(restarted(residuals), floor);
  let squares = 0;
  let count = 0;
  let products = 0;
  let left = 0;
  let right = 0;
  for (let k = 0; k < residuals.length; k++) {
    const e = residuals[k]!;
    if (Number.isNaN(e)) continue;
    squares += e * e;
    count++;
    const before = k > 0 ? residuals[k - 1]! : Number.NaN;
    if (Number.isNaN(before)) continue;
    products += e * before;
    left += before * before;
    right += e * e;
  }
  const rho = left > 0 && right > 0 ? products / Math.sqrt(left * right) : 0;
  const sd = count > 0 ? Math.sqrt(squares / count) : 0;
  return { rho: Math.min(MOST_RHO, Math.max(0, rho)), sd: Math.max(floor, sd) };
}

/**
 * Residuals as independent numbers of unit variance, in place of NaN nothing.
 *
 * - `whitened`: innovations of the first-order autoregression over their standard deviation; the first
 *   after a gap is weighted by that of the residuals themselves, so that the sum of squares is the exact
 *   likelihood of the autoregression.
 * - `free run`: residuals over a standard deviation that is widened by sqrt((1 + rho)/(1 - rho)), so
 *   that a mean over many counts for as much as the autocorrelation leaves of it.
 * - `restarted`: weighted like a free run, as they would be if the run began anew every five days.
 *
 * @param into  takes the numbers, 0 where there is no residual
 */
export function weigh(
  form: ErrorForm,
  residuals: Float64Array,
  { rho, sd }: Autocorrelation,
  into: Float64Array,
): void {
  if (form === 'restarted') {
    weigh('free run', restarted(residuals), { rho, sd }, into);
    return;
  }
  const alone = 1 / sd;
  const wide = form === 'free run' ? alone * Math.sqrt((1 - rho) / (1 + rho)) : 0;
  const innovation = alone / Math.sqrt(1 - rho * rho);
  let before = Number.NaN;
  for (let k = 0; k < residuals.length; k++) {
    const e = residuals[k]!;
    if (Number.isNaN(e)) into[k] = 0;
    else if (form === 'free run') into[k] = e * wide;
    else if (Number.isNaN(before)) into[k] = e * alone;
    else into[k] = (e - rho * before) * innovation;
    before = e;
  }
}

const MOST_RHO = 0.995;
