import type { Buy } from '../measures/owning-per-year.ts';
import { owningPerYear } from '../measures/owning-per-year.ts';
import type { PlanMeasures } from '../measures/plan-measures.ts';
import { yearsIn } from '../measures/years-in.ts';

/** Extra money a year of a plan over the baseline, owning included; below 0 is a saving. */
export const extraPerYear = (baseline: PlanMeasures, plan: PlanMeasures): number =>
  plan.money.total_per_year - baseline.money.total_per_year;

/**
 * The same were a fuel so many times as dear at all hours, without running again. Standing charges
 * are in both plans and cancel, so both must be able to draw the fuel.
 *
 * @param times  the fuel's price over today's [-]
 */
export function extraAtFuelPrice(
  baseline: PlanMeasures,
  plan: PlanMeasures,
  fuel: string,
  times: number,
): number {
  const paid = ({ money, period }: PlanMeasures) =>
    (money.by_fuel[fuel] ?? 0) / yearsIn(period.hours);
  return extraPerYear(baseline, plan) + (times - 1) * (paid(plan) - paid(baseline));
}

/**
 * The same were a bought thing of another price, without running again.
 *
 * @param buy  as the plan has it
 * @param price  instead [currency], 0 or more
 * @param rate  discount rate [1/year]
 */
export function extraAtDevicePrice(
  baseline: PlanMeasures,
  plan: PlanMeasures,
  buy: Buy,
  price: number,
  rate: number,
): number {
  const owning = owningPerYear([{ ...buy, price }], rate) - owningPerYear([buy], rate);
  return extraPerYear(baseline, plan) + owning;
}
