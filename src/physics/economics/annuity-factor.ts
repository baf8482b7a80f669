import { requireWithin } from '../../units/require-within.ts';

/**
 * What one unit of money at the end of every year is worth today.
 *
 *     (1 - (1 + r)^-n)/r, and n without interest
 *
 * @param rate  discount rate a year [-], 0 to 1; 0.08 is 8 %
 * @param years  how many payments, 0 to Infinity (for ever)
 * @returns annuity factor [years]
 * @throws RangeError outside those ranges, for ever without interest, or NaN
 *
 * @example annuityFactor(0.08, 6) // 4.62288
 */
export function annuityFactor(rate: number, years: number): number {
  requireWithin(rate, RATES, 'annuityFactor: rate', '');
  requireWithin(years, YEARS, 'annuityFactor: years', '');
  if (rate > 0) return -Math.expm1(-years * Math.log1p(rate)) / rate;
  if (years < Number.POSITIVE_INFINITY) return years;
  throw new RangeError('annuityFactor: payments for ever need a rate above 0, got 0');
}

/**
 * What a thing costs a year when its price is spread over its life, with interest.
 *
 * @param price  paid today [money], 0 or more
 * @param rate  discount rate a year [-], 0 to 1
 * @param years  that it lasts, above 0
 * @returns [money/year]
 * @throws RangeError outside those ranges, or NaN
 */
export function annualisedCost(price: number, rate: number, years: number): number {
  requireWithin(price, [0, 1e12], 'annualisedCost: price', '');
  const factor = annuityFactor(rate, years);
  if (years > 0) return price / factor;
  throw new RangeError(`annualisedCost: years must be above 0, got ${years}`);
}

const RATES = [0, 1] as const;
const YEARS = [0, Number.POSITIVE_INFINITY] as const;
