import { annualisedCost } from '../../physics/economics/annuity-factor.ts';

/** A thing bought for a plan. */
export interface Purchase {
  readonly what: string;
  /** [currency] */
  readonly price: number;
  /** [year] */
  readonly lastsYears: number;
}

/**
 * What purchases cost a year: each price spread over its life as an annuity, so that things
 * of different lives can be added. At a rate of 0 it is price over life.
 *
 * @param rate  discount rate [1/year], 0 to 1
 * @returns [currency/year]
 * @throws RangeError for a life that is not above zero or a rate outside its range
 */
export function purchaseCostPerYear(purchases: readonly Purchase[], rate: number): number {
  return purchases.reduce((sum, buy) => sum + annualisedCost(buy.price, rate, buy.lastsYears), 0);
}
