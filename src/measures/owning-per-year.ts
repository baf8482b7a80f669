import { requireWithin } from '../units/require-within.ts';

/** A thing bought for a plan. */
export interface Buy {
  readonly what: string;
  /** [currency] */
  readonly price: number;
  /** [year] */
  readonly lastsYears: number;
}

/**
 * What owning things costs a year: each price spread over its life as an annuity, so that things
 * of different lives can be added. At a rate of 0 it is price over life.
 *
 * @param rate  discount rate [1/year], -0.5 to 1
 * @returns [currency/year]
 * @throws RangeError for a life that is not above zero or a rate outside its range
 */
export function owningPerYear(buys: readonly Buy[], rate: number): number {
  return buys.reduce((sum, buy) => sum + buy.price / annuityFactor(rate, buy.lastsYears), 0);
}

/**
 * Present value of 1 a year, paid at the end of each of so many years.
 *
 *     a = (1 - (1 + r)^-n) / r
 *
 * @param rate   discount rate r [1/year], -0.5 to 1
 * @param years  n [year], above 0 up to 200; need not be whole
 * @throws RangeError outside these ranges, or NaN
 *
 * @example annuityFactor(0.08, 6) // 4.62288
 */
export function annuityFactor(rate: number, years: number): number {
  requireWithin(rate, [-0.5, 1], 'annuityFactor: discount rate', '1/year');
  requireWithin(years, [SHORTEST_LIFE, 200], 'annuityFactor: years', '');
  return rate === 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
}

const SHORTEST_LIFE = 1e-3;
