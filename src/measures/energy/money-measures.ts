import type { MeasuresSetup } from '../measures-setup.ts';
import type { PlanMeasures } from '../plan-measures.ts';
import { yearsIn } from '../years-in.ts';
import type { EnergyBill } from './energy-bill.ts';
import type { FuelUse } from './energy-use.ts';
import { purchaseCostPerYear } from './purchase-cost-per-year.ts';

/** What the period's energy costs, and what that and all that is bought come to a year. */
export function moneyMeasures(
  { prices, purchases, discountRate, period }: MeasuresSetup,
  uses: readonly FuelUse[],
  bill: EnergyBill,
): PlanMeasures['money'] {
  const purchaseCost = purchaseCostPerYear(purchases, discountRate);
  return {
    currency: prices.currency,
    energy: bill.total,
    winter_energy: bill.winter,
    by_fuel: bill.byFuel,
    by_use: Object.fromEntries(
      uses.flatMap(({ fuel, costByUse }) => (costByUse === null ? [] : [[fuel, costByUse]])),
    ),
    purchase_cost_per_year: purchaseCost,
    total_per_year: bill.total / yearsIn(period.hours) + purchaseCost,
  };
}
