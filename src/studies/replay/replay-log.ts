import type { Automation, Condition, Sensor } from '../../control/automation.ts';
import { createController } from '../../control/create-controller.ts';
import { createDayInputs } from '../../control/day-inputs.ts';
import { fillDayInputs } from '../../control/fill-day-inputs.ts';
import { createCommands, createObservation, followSchedules } from '../../control/observations.ts';
import type { Log } from '../../log/log.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { isoTime } from '../../units/iso-time.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Weather } from '../../weather/weather.ts';
import { type LoggedReadings, loggedReadings } from './logged-readings.ts';
import { type ReplayedRule, type RuleEvent, rulesReplayed } from './rules-replayed.ts';

/** What a scenario's rules would have made of a log; keys as JSON prints them. */
export interface Replay {
  readonly scenario: string;
  readonly plan: string;
  readonly from: string;
  readonly to: string;
  readonly hours: number;
  readonly rules: readonly ReplayedRule[];
  readonly events: readonly RuleEvent[];
  /** What stood in for readings that nobody logged, in sentences. */
  readonly notes: readonly string[];
}

/**
 * Feed what was logged to the sensors of a scenario and tell when its rules would have fired.
 *
 * Logged readings are taken as they are: what the scenario says of errors of sensors is left away.
 * Nothing that a rule asks for changes the log, so rules fire as if nobody had listened. Where nothing
 * was logged a reading meets no condition.
 */
export function replayLog(plan: PreparedPlan, log: Log, weather: Weather): Replay {
  const { home, household, dt } = plan;
  const start = Math.ceil(log.start / 3600) * 3600;
  const steps = Math.max(0, Math.floor((log.end - start) / dt));
  const readings = loggedReadings(plan, log, weather, { start, step: dt, count: steps });
  const automation = replayAutomation(plan, readings);
  const controller = createController(home, household, automation, dt);
  const inDay = Math.round(SECONDS_PER_DAY / dt);
  const day = createDayInputs(household, home.rooms.length, home.species.length, inDay);
  const observed = createObservation(
    home.rooms.length,
    home.species.length,
    home.devices.length,
    home.blinds?.length ?? 0,
  );
  const commands = createCommands(home);
  const fired = automation.rules.map(() => 0);
  const firings: { rule: number; step: number; home: boolean; awake: boolean }[] = [];
  for (let first = 0; first < steps; first += inDay) {
    const count = Math.min(inDay, steps - first);
    const from = start + first * dt;
    fillDayInputs(day, household, from, dt, count);
    readings.putIntoDay(day, first, count);
    controller.beginDay(from, count);
    for (let s = 0; s < count; s++) {
      readings.observe(observed, first + s);
      followSchedules(commands, day, s);
      controller.act(day, s, observed, commands);
      controller.report().rules.forEach((rule, r) => {
        if (rule.fired === fired[r]!) return;
        fired[r] = rule.fired;
        firings.push({ rule: r, step: first + s, ...whoIsThere(day, s, home.rooms.length) });
      });
    }
  }
  const { rules, events } = rulesReplayed(plan, readings, controller.report(), firings, {
    start,
    steps,
  });
  return {
    scenario: plan.scenario,
    plan: plan.plan,
    from: isoTime(start),
    to: isoTime(start + steps * dt),
    hours: (steps * dt) / 3600,
    rules,
    events,
    notes: readings.notes,
  };
}

function whoIsThere(
  { occupants, awake }: ReturnType<typeof createDayInputs>,
  s: number,
  rooms: number,
): { readonly home: boolean; readonly awake: boolean } {
  let [people, up] = [0, 0];
  for (let at = s * rooms; at < (s + 1) * rooms; at++) {
    people += occupants[at]!;
    up += awake[at]!;
  }
  return { home: people > 1e-9, awake: up > 1e-9 };
}

/**
 * A plan's automation that reads a log: its rules alone, with sensors that add no error of their own,
 * and nobody who opens windows because a rule asks.
 */
function replayAutomation(
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
