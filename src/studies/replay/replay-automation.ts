import type { Automation, Condition, Sensor } from '../../control/automation.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { LoggedReadings } from './logged-readings.ts';

/**
 * A plan's automation that reads a log: its rules alone, with sensors that add no error of their own,
 * and nobody who opens windows because a rule asks.
 */
export function replayAutomation(
  { automation }: PreparedPlan,
  { rooms }: Pick<LoggedReadings, 'rooms'>,
): Automation {
  const asLogged = (condition: Condition): Condition => ({ ...condition, sensor: EXACT });
  return {
    ...automation,
    presenceSensors: automation.presenceSensors.map((sensor, i) =>
      rooms[i]!.presence === null ? sensor : PLAIN_PRESENCE,
    ),
    airings: [],
    deviceControls: [],
    rules: automation.rules.map((rule) => ({
      ...rule,
      all: rule.all.map(asLogged),
      actions: rule.actions.filter((action) => action.do === 'tell' || action.do === 'lamp'),
    })),
  };
}

const EXACT: Sensor = { bias: 0, noise: 0, step: 0, lag: 0, every: 0 };
/** Logged presence has its hold-on time in it. */
const PLAIN_PRESENCE = { holdOn: 0, delay: 0, missesAwake: 0, missesAsleep: 0 };
