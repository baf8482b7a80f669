import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { yearsIn } from '../../measures/years-in.ts';
import { rounded } from '../rounded.ts';
import { heatsByElectricity } from './mean-electricity-price.ts';

/*
 * How a plan's bill for energy differs from the baseline's, in whole hundredths of the currency a
 * year: integers, which add up without a remainder.
 */

/** Bill of a plan beyond the baseline's, purchase cost left out; above 0 costs more. [hundredths/year] */
export function extraBill(baseline: PlanMeasures, plan: PlanMeasures): number {
  const perYear = ({ money }: PlanMeasures) => money.total_per_year - money.purchase_cost_per_year;
  return cents(perYear(plan) - perYear(baseline));
}

/**
 * What the fuels that heat is bought as cost more; null where electricity is one of them, because
 * the bill does not say what it was for. [hundredths/year]
 */
export function extraForHeating(baseline: PlanMeasures, plan: PlanMeasures): number | null {
  if (heatsByElectricity(baseline) || heatsByElectricity(plan)) return null;
  const years = yearsIn(plan.period.hours);
  const paid = ({ money }: PlanMeasures, fuel: string) => money.by_fuel[fuel] ?? 0;
  const extra = heatFuels(baseline, plan).reduce(
    (sum, fuel) => sum + paid(plan, fuel) - paid(baseline, fuel),
    0,
  );
  return cents(extra / years);
}

/** Heat bought less than in the baseline, by fuel, to tenths. [kWh/year] */
export function heatingLess(baseline: PlanMeasures, plan: PlanMeasures): [string, number][] {
  const years = yearsIn(plan.period.hours);
  const bought = ({ heating }: PlanMeasures, fuel: string) => heating.delivered_kwh[fuel] ?? 0;
  return heatFuels(baseline, plan).map((fuel) => [
    fuel,
    rounded((bought(baseline, fuel) - bought(plan, fuel)) / years, 1),
  ]);
}

/** Money in whole hundredths. */
export const cents = (money: number): number => Math.round(100 * rounded(money, 2));

const heatFuels = (...plans: readonly PlanMeasures[]): string[] => [
  ...new Set(plans.flatMap(({ heating }) => Object.keys(heating.delivered_kwh))),
];
