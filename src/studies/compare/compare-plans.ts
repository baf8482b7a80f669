import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { type Comparison, compareMeasures, type Purchases } from './compare.ts';

/** What comparing needs to know of one plan. */
interface ComparedPlan extends Purchases {
  readonly measures: PlanMeasures;
}

/**
 * Runs plans and sets them beside the first.
 *
 * @param plans    names, the baseline first
 * @param runPlan  runs one of them; called once each, in order, without waiting for an answer, so
 *   that plans may run side by side. Where several fail, the failure of the first counts.
 * @param leaveOut  told of a plan other than the baseline that failed, and whether the others are
 *   compared without it; absent is never
 */
export async function comparePlans(
  plans: readonly string[],
  runPlan: (plan: string) => ComparedPlan | Promise<ComparedPlan>,
  leaveOut: (plan: string, failure: unknown) => boolean = () => false,
): Promise<Comparison> {
  const runs = await Promise.allSettled(plans.map(async (plan) => runPlan(plan)));
  const outcomes = runs.flatMap((run, k) => {
    if (run.status === 'fulfilled') return [run.value];
    if (k === 0 || !leaveOut(plans[k]!, run.reason)) throw run.reason;
    return [];
  });
  return compareMeasures(
    outcomes.map(({ measures }) => measures),
    outcomes,
  );
}
