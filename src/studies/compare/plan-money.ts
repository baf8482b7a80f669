import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';

/** Money a year of a plan, purchase cost left out. */
export const billOf = ({ money }: Pick<PlanMeasures, 'money'>): number =>
  money.total_per_year - money.purchase_cost_per_year;

/** What all of it costs to buy. [currency] */
export const priceOf = (purchases: readonly Pick<Purchase, 'price'>[]): number =>
  purchases.reduce((sum, { price }) => sum + price, 0);

/** Extra money a year of a plan over the baseline, purchase cost included; below 0 is a saving. */
export const extraPerYear = (baseline: PlanMeasures, plan: PlanMeasures): number =>
  plan.money.total_per_year - baseline.money.total_per_year;

/** What a plan pays for the kWh of a fuel, its standing charge left out. [currency] */
export function paidForKwh({ money }: PlanMeasures, fuel: string): number {
  const uses = money.by_use[fuel];
  return uses === undefined ? 0 : uses.heating + uses.cooling + uses.other;
}
