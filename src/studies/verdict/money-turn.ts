import type { Prices } from '../../home/prices.ts';
import {
  type Purchase,
  purchaseCostPerYear,
} from '../../measures/energy/purchase-cost-per-year.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { yearsIn } from '../../measures/years-in.ts';
import { extraPerYear, paidForKwh, priceOf } from '../compare/plan-money.ts';
import { fuelsOf, meanFuelPrice } from '../purchase/mean-prices.ts';
import type { Weighing, WeighSetup } from './weigh-plan.ts';

/** The money at which a verdict turns, worked out from the runs there are. */
export interface MoneyTurn {
  /**
   * What turns it: the price of all that is bought, the price of the fuel whose use the plan changes
   * most, or what the plan is worth to those who live with it.
   */
  readonly of: 'price' | 'fuel price' | 'worth';
  /** The fuel; empty where it is none. */
  readonly fuel: string;
  /** Where it turns. [currency, currency/kWh or currency/year, by `of`] */
  readonly value: number;
  /** What it is today; null for a worth, which nobody has told. */
  readonly today: number | null;
}

export interface MoneyTurnSetup extends Pick<WeighSetup, 'range'> {
  readonly baseline: PlanMeasures;
  readonly plan: PlanMeasures;
  readonly weighed: Weighing;
  /** What the plan buys and the baseline does not. */
  readonly purchases: readonly Purchase[];
  /** [1/year] */
  readonly discountRate: number;
  readonly prices: Prices;
}

/**
 * Where the money of a plan turns its verdict: the price at which it costs as much as the cheapest
 * other way to the same, or else as nothing at all. Where no price of what is bought and none of the
 * fuel below ten times today's does, it is what the plan would have to be worth a year.
 */
export function moneyTurn(setup: MoneyTurnSetup): MoneyTurn {
  const { plan, weighed, purchases, discountRate } = setup;
  const { verdict, extra, rival, helped } = weighed;
  const worth: MoneyTurn = { of: 'worth', fuel: '', value: Math.abs(extra), today: null };
  if (verdict === 'not needed' || verdict === 'a trade-off') return worth;
  const beyond = rival === null || verdict === 'too little' ? 0 : extraPerYear(plan, rival);
  // Nothing to hold it against: what helps is worth its money or not.
  if (verdict === 'worth it' && rival === null && helped.length > 0 && extra >= 0) return worth;
  const left = rival === null || verdict === 'too little' ? -tooMuch(setup) : beyond;
  const price = priceOf(purchases);
  const yearly = purchaseCostPerYear(purchases, discountRate);
  if (yearly > 0) {
    const value = price * (1 + left / yearly);
    if (value >= 0) return { of: 'price', fuel: '', value, today: price };
    return { ...worth, value: Math.abs(left) };
  }
  const against = rival === null || verdict === 'too little' ? setup.baseline : rival;
  return fuelTurn(setup, against, -left) ?? { ...worth, value: Math.abs(left) };
}

/** Money by which a plan misses saving: of one that saves, though not surely, what the dear draws cost. */
const tooMuch = ({ weighed: { verdict, extra }, range }: MoneyTurnSetup): number =>
  verdict === 'too little' && extra < 0 ? range.high : extra;

/** @param more  what the plan costs more than what it is held against; below 0 is less [currency/year] */
function fuelTurn(
  { plan, prices }: MoneyTurnSetup,
  against: PlanMeasures,
  more: number,
): MoneyTurn | null {
  const years = yearsIn(plan.period.hours);
  const [fuel, difference] = fuelsOf(against, plan)
    .map((name): [string, number] => [
      name,
      (paidForKwh(plan, name) - paidForKwh(against, name)) / years,
    ])
    .sort(([, a], [, b]) => Math.abs(b) - Math.abs(a))[0] ?? ['', 0];
  const today = meanFuelPrice(plan, fuel, prices) ?? meanFuelPrice(against, fuel, prices);
  const times = 1 - more / difference;
  if (today === null || !(times > 0 && times < MOST_TIMES)) return null;
  return { of: 'fuel price', fuel, value: times * today, today };
}

/** A fuel so many times as dear as today is not worth a word. */
const MOST_TIMES = 10;
