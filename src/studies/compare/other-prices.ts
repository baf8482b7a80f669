import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';
import { purchaseCostPerYear } from '../../measures/energy/purchase-cost-per-year.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { yearsIn } from '../../measures/years-in.ts';
import { paidForKwh } from './plan-money.ts';

/**
 * Figures of a plan were a kWh of a fuel so many times as dear at all hours, without running again;
 * standing charges stay.
 *
 * @param times  the fuel's price over today's [-]
 */
export function atFuelPrice(plan: PlanMeasures, fuel: string, times: number): PlanMeasures {
  const more = (times - 1) * paidForKwh(plan, fuel);
  return withMoney(plan, { energy: more, total: more / yearsIn(plan.period.hours) });
}

/**
 * Figures of a plan were what is bought for it so many times as dear, without running again.
 *
 * @param bought  what gets dearer, as the plan has it
 * @param times  its price over today's, 0 or more [-]
 * @param rate  discount rate [1/year]
 */
export function atPurchasePrice(
  plan: PlanMeasures,
  bought: readonly Purchase[],
  times: number,
  rate: number,
): PlanMeasures {
  const purchaseCost = purchaseCostPerYear(bought, rate) * (times - 1);
  return withMoney(plan, { purchaseCost, total: purchaseCost });
}

function withMoney(
  plan: PlanMeasures,
  {
    energy = 0,
    purchaseCost = 0,
    total,
  }: { energy?: number; purchaseCost?: number; total: number },
): PlanMeasures {
  const { money } = plan;
  return {
    ...plan,
    money: {
      ...money,
      energy: money.energy + energy,
      purchase_cost_per_year: money.purchase_cost_per_year + purchaseCost,
      total_per_year: money.total_per_year + total,
    },
  };
}
