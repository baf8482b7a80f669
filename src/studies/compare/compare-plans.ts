import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { type Comparison, compareMeasures, type Purchases } from './compare.ts';

/** What comparing needs to know of one plan. */
export interface PlanFigures extends Purchases {
  readonly measures: PlanMeasures;
}

/**
 * Runs plans and sets them beside the first.
 *
 * @param plans    names, the baseline first
 * @param runPlan  runs one of them; called once each, in order, without waiting for an answer, so
 *   that plans may run side by side. Where several fail, the failure of the first counts.
 */
export async function comparePlans(
  plans: readonly string[],
  runPlan: (plan: string) => PlanFigures | Promise<PlanFigures>,
): Promise<Comparison> {
  const runs = await Promise.allSettled(plans.map(async (plan) => runPlan(plan)));
  const outcomes = runs.map((run) => {
    if (run.status === 'rejected') throw run.reason;
    return run.value;
  });
  return compareMeasures(
    outcomes.map(({ measures }) => measures),
    outcomes,
  );
}
