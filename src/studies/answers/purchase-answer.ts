import { newPurchases } from '../compare/new-purchases.ts';
import { extraPerYear } from '../compare/plan-money.ts';
import { pricesOfBoth } from '../purchase/mean-prices.ts';
import { furtherEffects, lesserWords } from '../verdict/decision.ts';
import { doneBesides } from '../verdict/done-besides.ts';
import { guardsOf } from '../verdict/guards.ts';
import { leadWords } from '../verdict/lead-words.ts';
import { moneyTurn } from '../verdict/money-turn.ts';
import { turnWords } from '../verdict/turn-words.ts';
import { weighPlan } from '../verdict/weigh-plan.ts';
import type { AskedPlan } from './asked.ts';

/**
 * Whether to buy what a plan brings, weighed against every other plan that was run and brings none of
 * it, at today's prices: the verdict, what carries it, then the money at which it turns.
 *
 * @param against  what the plan is measured by
 * @param plans    all that were run
 */
export function purchaseAnswer(
  plan: AskedPlan,
  against: AskedPlan,
  plans: readonly AskedPlan[],
): { readonly inShort: string; readonly sentences: readonly string[] } {
  const { discountRate } = plan.prepared;
  const prices = pricesOfBoth(against.prepared.prices, plan.prepared.prices);
  const purchases = newPurchases(against.prepared.purchases, plan.prepared.purchases);
  const bought = new Set(purchases.map(({ what }) => what));
  const brings = ({ prepared }: AskedPlan): boolean =>
    newPurchases(against.prepared.purchases, prepared.purchases).some(({ what }) =>
      bought.has(what),
    );
  const rivals = plans.filter((other) => other !== against && !brings(other));
  const extra = extraPerYear(against.measures, plan.measures);
  const setup = {
    ...{ baseline: against.measures, plan: plan.measures, purchases, discountRate, prices },
    rivals: rivals.map(({ measures }) => measures),
    ...{ guards: guardsOf(against.prepared, plan.prepared), room: null, flips: [] },
    range: { low: extra, high: extra },
    ...doneBesides(
      against.prepared,
      plan.prepared,
      rivals.map(({ prepared }) => prepared),
    ),
  };
  const weighed = weighPlan(setup);
  const turn = moneyTurn({ ...setup, weighed });
  const lead = leadWords(setup, weighed);
  // In one, so that no verdict is told without the figures it rests on.
  const [carries, ...because] = lead.because;
  const sentences = [
    carries === undefined ? lead.verdict : `${lead.verdict} ${carries}`,
    ...because,
    ...lesserWords(setup, weighed),
    ...turnWords(setup, weighed, turn),
    ...(weighed.verdict === 'not needed' ? furtherEffects(weighed, lead) : []),
  ];
  return { inShort: lead.verdict, sentences };
}
