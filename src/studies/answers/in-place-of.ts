import type { PreparedPlan } from '../../scenario/prepared.ts';
import { sumText } from '../../units/sum-text.ts';
import { newPurchases } from '../compare/new-purchases.ts';
import { priceOf } from '../compare/plan-money.ts';
import { newDevices } from '../purchase/new-devices.ts';
import { thingWords } from '../purchase/thing-words.ts';

/**
 * What a plan does without to have something else, behind a question: " in place of boiler for
 * 3000 GBP", or " in place of the old purifier" where what goes is not bought; empty for nothing.
 */
export function inPlaceOf(plan: PreparedPlan, other: PreparedPlan): string {
  const spared = newPurchases(plan.purchases, other.purchases);
  if (spared.length > 0) return ` in place of ${boughtWords(spared, plan)}`;
  const gone = newDevices(plan, other).map(({ name }) => name);
  return gone.length === 0 ? '' : ` in place of the ${gone.join(' and the ')}`;
}

/** "dehumidifier for 180 GBP" */
export const boughtWords = (
  purchases: PreparedPlan['purchases'],
  { prices }: PreparedPlan,
): string => `${thingWords(purchases)} for ${sumText(priceOf(purchases), 0)} ${prices.currency}`;
