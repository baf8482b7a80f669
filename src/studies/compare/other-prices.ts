import type { Buy } from '../../measures/energy/owning-per-year.ts';
import { owningPerYear } from '../../measures/energy/owning-per-year.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { yearsIn } from '../../measures/years-in.ts';

/** Extra money a year of a plan over the baseline, owning included; below 0 is a saving. */
export const extraPerYear = (baseline: PlanMeasures, plan: PlanMeasures): number =>
  plan.money.total_per_year - baseline.money.total_per_year;

/**
 * Figures of a plan were a fuel so many times as dear at all hours, without running again. Standing
 * charges are made dearer too, so only differences between plans that keep the same meters count.
 *
 * @param times  the fuel's price over today's [-]
 */
export function atFuelPrice(plan: PlanMeasures, fuel: string, times: number): PlanMeasures {
  const more = (times - 1) * (plan.money.by_fuel[fuel] ?? 0);
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
  bought: readonly Buy[],
  times: number,
  rate: number,
): PlanMeasures {
  const owning = owningPerYear(bought, rate) * (times - 1);
  return withMoney(plan, { owning, total: owning });
}

function withMoney(
  plan: PlanMeasures,
  { energy = 0, owning = 0, total }: { energy?: number; owning?: number; total: number },
): PlanMeasures {
  const { money } = plan;
  return {
    ...plan,
    money: {
      ...money,
      energy: money.energy + energy,
      owning_per_year: money.owning_per_year + owning,
      total_per_year: money.total_per_year + total,
    },
  };
}
