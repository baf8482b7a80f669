import type { Prices } from '../../home/prices.ts';
import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';

/** One line of a sum. Values are as they are to be printed: what is computed of them is too. */
export interface SumLine {
  readonly text: string;
  readonly value: number;
  readonly unit: string;
  /** True for the lines that are added up; the last line is their total. */
  readonly adds: boolean;
}

/** Two plans and what is bought between them, for the sum of one purchase. */
export interface PurchaseSumSetup {
  readonly baseline: PlanMeasures;
  readonly plan: PlanMeasures;
  /** Name of a device of the plan; null for none. */
  readonly device: string | null;
  /** What the plan buys and the baseline does not. */
  readonly purchases: readonly Purchase[];
  /** What the baseline buys and the plan does not; absent for nothing. */
  readonly spared?: readonly Purchase[];
  /** [1/year] */
  readonly discountRate: number;
  readonly prices: Prices;
  /** Water by its label, null for none. [L/day] */
  readonly label: number | null;
}
