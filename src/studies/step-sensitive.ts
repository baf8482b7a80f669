import { MOST_STEPS, type StepSensitive } from '../measures/notices/step-notices.ts';
import type { PreparedPlan } from '../scenario/prepared.ts';

/**
 * Devices that a plan's readings switch, themselves or by rules, unless they have to run for a step at
 * least, or are made to rest after hardly more than one, which no step changes; and how long windows are
 * opened at a time.
 */
export function stepSensitive({
  automation,
  household,
  dt,
}: Pick<PreparedPlan, 'automation' | 'household' | 'dt'>): StepSensitive {
  const switched = automation.deviceControls.filter(
    ({ by, leastRun, mostRun }) =>
      SWITCHED.has(by.kind) && leastRun < dt && mostRun > MOST_STEPS * dt,
  );
  const byClock = household.openings.flatMap(({ spells }) =>
    spells.map(({ from, to }) => 60 * (to - from)),
  );
  return {
    devices: [...new Set(switched.map(({ device }) => device))],
    byClock: [...new Set(byClock)],
    byHabit: automation.airings.map(({ lasts }) => lasts),
  };
}

const SWITCHED: ReadonlySet<string> = new Set(['reading', 'rule']);
