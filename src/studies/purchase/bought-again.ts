import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';
import { annuityFactor } from '../../physics/economics/annuity-factor.ts';

/** Something that wears out before the longest life bought ends, and is bought again. */
export interface BoughtAgain {
  /** Below 0 for what is not bought then. [currency] */
  readonly price: number;
  readonly afterYears: number;
  /** Share of the price that falls to the years that are left, as counted, and with interest. [-] */
  readonly share: { readonly counted: number; readonly today: number };
}

/**
 * What is bought again within the whole years of the longest life bought. Of what outlasts them its
 * purchase cost of the years that are left counts, as in the present value.
 *
 * @param purchases  what is not bought then has a price below 0
 * @param rate  [1/year]
 */
export function boughtAgain(purchases: readonly Purchase[], rate: number): BoughtAgain[] {
  const bought = purchases.filter(({ price }) => price > 0);
  const years = Math.max(0, ...bought.map(({ lastsYears }) => Math.floor(lastsYears)));
  return purchases.flatMap(({ price, lastsYears }) => {
    const times = Math.max(0, Math.ceil(years / lastsYears) - 1);
    return Array.from({ length: times }, (_, k): BoughtAgain => {
      const afterYears = (k + 1) * lastsYears;
      const used = Math.min(lastsYears, years - afterYears);
      const today = annuityFactor(rate, used) / annuityFactor(rate, lastsYears);
      return { price, afterYears, share: { counted: used / lastsYears, today } };
    });
  });
}
