import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { type Comparison, compareMeasures, type Purchases } from './compare.ts';

/** What comparing needs to know of one plan. */
export interface PlanFigures extends Purchases {
  readonly measures: PlanMeasures;
}

/**
 * Runs plans one after the other and sets them beside the first.
 *
 * @param plans    names, the baseline first
 * @param runPlan  runs one of them; called once each, in order
 */
export async function comparePlans(
  plans: readonly string[],
  runPlan: (plan: string) => PlanFigures | Promise<PlanFigures>,
): Promise<Comparison> {
  const outcomes: PlanFigures[] = [];
  for (const plan of plans) {
    outcomes.push(await runPlan(plan));
  }
  return compareMeasures(
    outcomes.map(({ measures }) => measures),
    outcomes,
  );
}
