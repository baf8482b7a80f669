import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { PlanVariant } from '../../studies/plan-variant.ts';
import { fewAtOnce } from './few-at-once.ts';
import { ownCheck } from './own-check.ts';
import type { RunCount } from './run-count.ts';

/**
 * Runs of variants in years of weather, each checked, and counted as soon as it is asked for, so that
 * their number is known early. Prepared plans are large: no more than the threads need wait for them.
 */
export function countedRuns(
  count: RunCount,
  threads: number,
  run: (variant: PlanVariant, year: number) => Promise<PlanMeasures>,
): (variant: PlanVariant, year: number) => Promise<PlanMeasures> {
  const inTurn = fewAtOnce(2 * threads, async (variant: PlanVariant, year: number) => {
    const measures = await run(variant, year);
    ownCheck([measures]);
    return measures;
  });
  return (variant, year) => {
    count.asked();
    return inTurn(variant, year);
  };
}
