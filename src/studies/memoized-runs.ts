import type { PlanMeasures } from '../measures/plan-measures.ts';
import type { RunVaried } from './plan-variant.ts';

/** The same answers, each run made only once: studies ask for the same plan again and again. */
export function rememberedRuns(run: RunVaried): RunVaried {
  const known = new Map<string, Promise<PlanMeasures>>();
  return (varied) => {
    const key = JSON.stringify(varied);
    const before = known.get(key);
    if (before !== undefined) return before;
    const now = Promise.resolve().then(() => run(varied));
    known.set(key, now);
    return now;
  };
}
