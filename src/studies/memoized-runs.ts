import type { PlanMeasures } from '../measures/plan-measures.ts';
import type { RunVariant } from './plan-variant.ts';

/** The same answers, each run made only once: studies ask for the same plan again and again. */
export function memoizedRuns(run: RunVariant): RunVariant {
  const known = new Map<string, Promise<PlanMeasures>>();
  return (variant) => {
    const key = JSON.stringify(variant);
    const before = known.get(key);
    if (before !== undefined) return before;
    const now = Promise.resolve().then(() => run(variant));
    known.set(key, now);
    return now;
  };
}
