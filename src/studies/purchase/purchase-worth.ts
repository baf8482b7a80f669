import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';
import { annuityFactor } from '../../physics/economics/annuity-factor.ts';
import { simplePayback } from '../../physics/economics/net-present-value.ts';
import { priceOf } from '../compare/plan-money.ts';
import { rounded } from '../rounded.ts';

/** What a purchase earns, where it earns anything. */
export interface PurchaseWorth {
  /** Price over yearly saving, without interest. [year] */
  readonly payback_years: number | null;
  /** Savings over the longest life in today's money, less what is spent. [currency] */
  readonly npv: number | null;
  /** Years that a yearly saving is multiplied by for that, as printed. [year] */
  readonly npv_years: number | null;
  /** What is spent in today's money, that which is bought again included. [currency] */
  readonly npv_spent: number | null;
}

/**
 * Payback and present value of what is bought; null where nothing is saved in cash, because a
 * payback of what never pays is no number.
 *
 * What lives shorter than the longest life is bought again at the same price. Years to multiply by
 * are rounded to five digits behind the point, as they are printed, so that both can be redone.
 *
 * @param purchases  what is not bought then has a price below 0
 * @param saved  on the bill, purchase cost left aside [currency/year]
 * @param rate   discount rate [1/year], 0 to 1
 */
export function purchaseWorth(
  purchases: readonly Purchase[],
  saved: number,
  rate: number,
): PurchaseWorth {
  const spent = priceOf(purchases);
  if (saved <= 0 || spent <= 0) return NOTHING;
  const bought = purchases.filter(({ price }) => price > 0);
  const horizon = Math.max(...bought.map(({ lastsYears }) => lastsYears));
  const all = printedFactor(rate, horizon);
  const today = purchases.reduce((sum, { price, lastsYears }) => {
    const again = lastsYears === horizon ? 1 : all / printedFactor(rate, lastsYears);
    return sum + price * again;
  }, 0);
  const npv_spent = rounded(today, 2);
  return {
    payback_years: simplePayback(spent, saved),
    npv: rounded(saved * all - npv_spent, 2),
    npv_years: all,
    npv_spent,
  };
}

const NOTHING: PurchaseWorth = {
  ...{ payback_years: null, npv: null, npv_years: null, npv_spent: null },
};

/** Years that a price is divided by, or a yearly saving multiplied, as printed. [year] */
export const printedFactor = (rate: number, years: number): number =>
  rounded(annuityFactor(rate, years), 5);
