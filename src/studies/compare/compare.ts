import { coldArrivalHours, dampEmptyHours, roomHours } from '../../measures/comfort/room-hours.ts';
import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { isYearOrMore, yearsIn } from '../../measures/years-in.ts';
import { netPresentValue, simplePayback } from '../../physics/economics/net-present-value.ts';
import { newPurchases } from './new-purchases.ts';
import { type Cause, causesOf } from './plan-causes.ts';
import { billOf, extraPerYear, priceOf } from './plan-money.ts';

/** Plans side by side: the figures of each, and how each differs from the first. */
export interface Comparison {
  readonly baseline: string;
  readonly plans: readonly PlanMeasures[];
  /** One for every plan but the first. */
  readonly differences: readonly PlanDifference[];
}

/** A plan minus the baseline; negative is less. Hours are room-hours: added up over the rooms. */
interface PlanDifference {
  readonly plan: string;
  readonly useful_kwh: number;
  /** Energy of the period, standing charges included. [currency] */
  readonly energy_money: number;
  /** Energy scaled to a year, and purchase cost a year. */
  readonly total_money_per_year: number;
  readonly humidity_high_hours: number;
  readonly temperature_low_hours: number;
  /** Room-hours below the temperature band within two hours of somebody coming in. [h] */
  readonly cold_arrival_hours: number;
  /** Room-hours above the humidity band while nobody is in the room. [h] */
  readonly humidity_high_empty_hours: number;
  /** Extra price over yearly saving of energy; null where nothing is bought or saved, or less than a year was run. */
  readonly payback_years: number | null;
  /**
   * Extra money for each room-hour above the humidity band that the plan avoids; null where it
   * avoids none or costs no more.
   */
  readonly money_per_damp_hour_avoided: number | null;
  /** Net present value over the longest life among what it buys and the baseline does not; null where that is nothing, or less than a year was run. [currency] */
  readonly npv: number | null;
  /** By what the plan moves these figures, what moves most first. */
  readonly causes: readonly Cause[];
}

/** What was bought for a plan, and the discount rate for the years to come. [1/year] */
export interface Purchases {
  readonly purchases: readonly Purchase[];
  readonly discountRate: number;
}

/**
 * Sets plans beside the first of them.
 *
 * @param purchases  one per plan, in the same order; left out where nothing is bought
 * @throws RangeError for an empty list
 */
export function compareMeasures(
  list: readonly PlanMeasures[],
  purchases: readonly Purchases[] = [],
): Comparison {
  const [first, ...others] = list;
  if (first === undefined) throw new RangeError('compareMeasures: needs at least one plan');
  return {
    baseline: first.plan,
    plans: list,
    differences: others.map((other, k) =>
      difference(first, other, purchases[0] ?? NOTHING, purchases[k + 1] ?? NOTHING),
    ),
  };
}

function difference(
  base: PlanMeasures,
  plan: PlanMeasures,
  had: Purchases,
  bought: Purchases,
): PlanDifference {
  const damp =
    roomHours(plan, 'outside_band_hours', 'humidity_high') -
    roomHours(base, 'outside_band_hours', 'humidity_high');
  const extra = extraPerYear(base, plan);
  const avoided = -damp / yearsIn(plan.period.hours);
  const saved = billOf(base) - billOf(plan);
  const added = newPurchases(had.purchases, bought.purchases);
  const price = priceOf(bought.purchases) - priceOf(had.purchases);
  // Days of one season tell nothing of the years in which a price comes back.
  const years = isYearOrMore(plan.period.hours);
  return {
    plan: plan.plan,
    useful_kwh: plan.heating.useful_kwh - base.heating.useful_kwh,
    energy_money: plan.money.energy - base.money.energy,
    total_money_per_year: extra,
    humidity_high_hours: damp,
    temperature_low_hours:
      roomHours(plan, 'outside_band_hours', 'temperature_low') -
      roomHours(base, 'outside_band_hours', 'temperature_low'),
    cold_arrival_hours: coldArrivalHours(plan) - coldArrivalHours(base),
    humidity_high_empty_hours: dampEmptyHours(plan) - dampEmptyHours(base),
    payback_years: years && price > 0 && saved >= LEAST ? simplePayback(price, saved) : null,
    money_per_damp_hour_avoided: avoided > 0 && extra > 0 ? extra / avoided : null,
    npv: years ? worthToday(extra, added, bought.discountRate) : null,
    causes: causesOf(base, plan),
  };
}

/**
 * What a plan's yearly money is worth today. The purchase cost is in the yearly money as an annuity, so a
 * thing that lives shorter than the horizon is taken to be bought again at the same price.
 */
function worthToday(
  extraPerYear: number,
  purchases: readonly Purchase[],
  discountRate: number,
): number | null {
  if (purchases.length === 0) return null;
  const horizon = Math.max(...purchases.map((buy) => buy.lastsYears));
  return netPresentValue(0, 0 - extraPerYear, discountRate, horizon);
}

/** Less than that is rounding. [currency/year] */
const LEAST = 0.005;
const NOTHING: Purchases = { purchases: [], discountRate: 0 };
