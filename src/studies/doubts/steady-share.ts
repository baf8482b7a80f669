import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { extraPerYear } from '../compare/other-prices.ts';
import { asksTheSame } from '../verdict/weigh-plan.ts';
import type { FlipsSetup } from './decision-flips.ts';
import type { PlanDraws } from './plan-draws.ts';

/**
 * Share of the draws in which a plan comes out beside doing nothing as it does as things are taken to be.
 * Other ways to the same are not drawn.
 */
export function steadyShare(
  { baseline, plan, range, weigh }: Pick<FlipsSetup, 'range' | 'weigh'> & Figures,
  { pairs, changesOf }: Pick<PlanDraws, 'pairs' | 'changesOf'>,
): number {
  const extra = extraPerYear(baseline.measures, plan.measures);
  const verdictOf = (before: PlanMeasures, after: PlanMeasures, moved: number) => {
    const kept = { low: range.low + moved, high: range.high + moved };
    return weigh({ baseline: before, plan: after, rivals: [], range: kept }).verdict;
  };
  const now = verdictOf(baseline.measures, plan.measures, 0);
  const extras = changesOf(({ measures }) => measures.money.total_per_year);
  const same = pairs.filter(([before, after], k) =>
    asksTheSame(verdictOf(before.measures, after.measures, extras[k]! - extra), now),
  );
  return same.length / pairs.length;
}

/** Baseline and plan as things are taken to be. */
interface Figures {
  readonly baseline: { readonly measures: PlanMeasures };
  readonly plan: { readonly measures: PlanMeasures };
}
