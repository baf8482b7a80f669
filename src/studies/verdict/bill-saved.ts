import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { billOf } from '../compare/plan-money.ts';

/** What a plan takes off the bill, and what its price comes to beyond that of the baseline. [currency/year] */
export interface BillSaved {
  readonly saved: number;
  readonly price: number;
}

/**
 * What is bought for its money: it takes something off the bill that counts beside its price, even if
 * it is less. Null for what is not.
 */
export function billSaved(baseline: PlanMeasures, plan: PlanMeasures): BillSaved | null {
  const price = plan.money.purchase_cost_per_year - baseline.money.purchase_cost_per_year;
  const saved = billOf(baseline) - billOf(plan);
  return price > 0 && saved >= LEAST_SAVED * price ? { saved, price } : null;
}

/** Share of its price below which nobody buys a thing to save money. [-] */
const LEAST_SAVED = 0.1;
