import type { Prices, Tariff } from '../../home/prices.ts';
import type { MoneyByUse, PlanMeasures } from '../../measures/plan-measures.ts';
import { yearsIn } from '../../measures/years-in.ts';
import { billOf, paidForKwh } from '../compare/plan-money.ts';
import { rounded } from '../rounded.ts';
import { fuelsOf, MEAN, priceOfDifference } from './mean-prices.ts';

/** Bill of a plan beyond the baseline's, purchase cost left out; above 0 costs more. [hundredths/year] */
export const extraBill = (baseline: PlanMeasures, plan: PlanMeasures): number =>
  cents(billOf(plan) - billOf(baseline));

/** What a plan draws of a fuel for heating or cooling more or less than the baseline. Values as printed. */
export interface UseDifference {
  readonly use: 'heating' | 'cooling';
  readonly fuel: string;
  /** What it draws more, at a price; or all that is drawn before and with the plan, each at its own. */
  readonly products: readonly [Product] | readonly [before: Product, after: Product];
  /** [hundredths/year] */
  readonly cents: number;
}

/** kWh times price. */
interface Product {
  /** Below 0 where it is a difference that is less. [kWh/year] */
  readonly kwh: number;
  /** [currency/kWh] */
  readonly price: number;
  readonly how: string;
  /** [hundredths/year] */
  readonly cents: number;
}

/**
 * Differences of a tenth of a kWh or a hundredth of money and more for which a price is known. Where no
 * price that the tariff knows explains them, because heat moved to other hours or the tariff is another,
 * both plans are told with their own.
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
      const money = paid(plan, use, fuel) - paid(baseline, use, fuel);
      if (known === undefined || (kwh === 0 && cents(money / years) === 0)) return [];
      const { price, how } = priceOfDifference(fuel, money, more, prices);
      if (kwh !== 0 && explains(known.tariff, money, more)) {
        const only = product(kwh, price, how);
        return [{ use, fuel, products: [only], cents: only.cents }];
      }
      const [before, after] = [baseline, plan].map((each) => {
        const all = bought(each, use, fuel);
        return product(all / years, all > 0 ? paid(each, use, fuel) / all : 0, MEAN);
      }) as [Product, Product];
      return [{ use, fuel, products: [before, after], cents: after.cents - before.cents }];
    });
  });
}

function product(kwh: number, price: number, how: string): Product {
  const [all, each] = [rounded(kwh, 1), rounded(price, 5)];
  return { kwh: all, price: each, how, cents: cents(all * each) };
}

/** Whether so many kWh cost that money at a price between the lowest and the highest of a tariff. */
function explains(tariff: Tariff, money: number, kwh: number): boolean {
  const [low, high] = pricesOf(tariff).reduce(
    ([least, most], price) => [Math.min(least, price), Math.max(most, price)],
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY] as const,
  );
  const slack = 1e-6 * Math.max(1, Math.abs(money));
  const [one, other] = [low * kwh, high * kwh];
  return money >= Math.min(one, other) - slack && money <= Math.max(one, other) + slack;
}

function pricesOf(tariff: Tariff): readonly number[] {
  if (tariff.by === 'series') return [...tariff.prices];
  const blocks = tariff.by === 'blocks' ? tariff.blocks : [];
  return [tariff.price, ...blocks.map(({ price }) => price)];
}

/** A standing charge that one of two plans has less or more of. [hundredths/year] */
export function standingDifferences(
  baseline: PlanMeasures,
  plan: PlanMeasures,
): { readonly fuel: string; readonly cents: number }[] {
  const standing = (of: PlanMeasures, fuel: string): number =>
    ((of.money.by_fuel[fuel] ?? 0) - paidForKwh(of, fuel)) / yearsIn(of.period.hours);
  return fuelsOf(baseline, plan).flatMap((fuel) => {
    const more = cents(standing(plan, fuel) - standing(baseline, fuel));
    return more === 0 ? [] : [{ fuel, cents: more }];
  });
}

/** Money in whole hundredths. */
export const cents = (money: number): number => Math.round(100 * rounded(money, 2));

const bought = (plan: PlanMeasures, use: UseDifference['use'], fuel: string): number =>
  plan[use].delivered_kwh[fuel] ?? 0;
const paid = ({ money }: PlanMeasures, use: keyof MoneyByUse, fuel: string): number =>
  money.by_use[fuel]?.[use] ?? 0;
