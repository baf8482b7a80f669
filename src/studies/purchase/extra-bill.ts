import type { Prices } from '../../home/prices.ts';
import type { MoneyByUse, PlanMeasures } from '../../measures/plan-measures.ts';
import { yearsIn } from '../../measures/years-in.ts';
import { rounded } from '../rounded.ts';
import { priceOfDifference } from './mean-prices.ts';

/** Bill of a plan beyond the baseline's, purchase cost left out; above 0 costs more. [hundredths/year] */
export function extraBill(baseline: PlanMeasures, plan: PlanMeasures): number {
  const perYear = ({ money }: PlanMeasures) => money.total_per_year - money.purchase_cost_per_year;
  return cents(perYear(plan) - perYear(baseline));
}

/** What a plan draws of a fuel for heating or cooling more or less than the baseline. Values as printed. */
export interface UseDifference {
  readonly use: 'heating' | 'cooling';
  readonly fuel: string;
  /** Below 0 is less. [kWh/year] */
  readonly kwh: number;
  /** [currency/kWh] */
  readonly price: number;
  readonly how: string;
  /** kWh times price. [hundredths/year] */
  readonly cents: number;
}

/**
 * Differences of a tenth of a kWh and more for which a price is known. Where a tariff with hours makes
 * less than a whole kWh cost something, no price of a kWh explains it: that is left to the rest.
 */
export function useDifferences(
  baseline: PlanMeasures,
  plan: PlanMeasures,
  prices: Prices,
): UseDifference[] {
  const years = yearsIn(plan.period.hours);
  return (['heating', 'cooling'] as const).flatMap((use) => {
    const fuels = [
      ...new Set([baseline, plan].flatMap((one) => Object.keys(one[use].delivered_kwh))),
    ];
    return fuels.flatMap((fuel): UseDifference[] => {
      const more = bought(plan, use, fuel) - bought(baseline, use, fuel);
      const kwh = rounded(more / years, 1);
      const known = prices.fuels[fuel as keyof typeof prices.fuels];
      if (kwh === 0 || known === undefined) return [];
      if (known.tariff.by !== 'flat' && Math.abs(kwh) < 1) return [];
      const money = paid(plan, use, fuel) - paid(baseline, use, fuel);
      const { price, how } = priceOfDifference(fuel, money, more, prices);
      const each = rounded(price, 5);
      return [{ use, fuel, kwh, price: each, how, cents: cents(kwh * each) }];
    });
  });
}

/** Money in whole hundredths. */
export const cents = (money: number): number => Math.round(100 * rounded(money, 2));

const bought = (plan: PlanMeasures, use: UseDifference['use'], fuel: string): number =>
  plan[use].delivered_kwh[fuel] ?? 0;
const paid = ({ money }: PlanMeasures, use: keyof MoneyByUse, fuel: string): number =>
  money.by_use[fuel]?.[use] ?? 0;
