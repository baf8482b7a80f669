import type { PlanMeasures } from '../measures/plan-measures.ts';
import type { RunVariant } from './plan-variant.ts';

/** Caches runs by their variant, because studies ask for one plan again and again. */
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
