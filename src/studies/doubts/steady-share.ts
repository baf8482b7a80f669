import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { asksTheSame } from '../verdict/weigh-plan.ts';
import type { FlipsSetup } from './decision-flips.ts';
import type { PlanDraws } from './plan-draws.ts';

/**
 * Share of the draws in which a plan comes out beside doing nothing as it does as things are taken to be. In a
 * draw nothing is in doubt any more, so that its money is what it is. Other ways to the same are not drawn.
 */
export function steadyShare(
  { baseline, plan, range, weigh }: Pick<FlipsSetup, 'range' | 'weigh'> & Figures,
  { pairs, changesOf }: Pick<PlanDraws, 'pairs' | 'changesOf'>,
): number {
  const verdictOf = (before: PlanMeasures, after: PlanMeasures, money: FlipsSetup['range']) =>
    weigh({ baseline: before, plan: after, rivals: [], range: money }).verdict;
  const now = verdictOf(baseline.measures, plan.measures, range);
  const extras = changesOf(({ measures }) => measures.money.total_per_year);
  const same = pairs.filter(([before, after], k) =>
    asksTheSame(
      verdictOf(before.measures, after.measures, { low: extras[k]!, high: extras[k]! }),
      now,
    ),
  );
  return same.length / pairs.length;
}

/** Baseline and plan as things are taken to be. */
interface Figures {
  readonly baseline: { readonly measures: PlanMeasures };
  readonly plan: { readonly measures: PlanMeasures };
}
