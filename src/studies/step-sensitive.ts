import type { StepSensitive } from '../measures/notices/step-notices.ts';
import type { PreparedPlan } from '../scenario/prepared.ts';

/**
 * Devices that a plan's readings switch, themselves or by rules, unless they have to run for a step at
 * least; and how long its people open windows at a time.
 */
export function stepSensitive({
  automation,
  household,
  dt,
}: Pick<PreparedPlan, 'automation' | 'household' | 'dt'>): StepSensitive {
  const switched = automation.deviceControls.filter(
    ({ by, leastRun }) => SWITCHED.has(by.kind) && leastRun < dt,
  );
  const byClock = household.openings.flatMap(({ spells }) =>
    spells.map(({ from, to }) => 60 * (to - from)),
  );
  const byHabit = automation.airings.map(({ lasts }) => lasts);
  return {
    devices: [...new Set(switched.map(({ device }) => device))],
    airings: [...new Set([...byClock, ...byHabit])],
  };
}

const SWITCHED: ReadonlySet<string> = new Set(['reading', 'rule']);
