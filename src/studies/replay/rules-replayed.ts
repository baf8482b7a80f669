import type { Rule } from '../../control/automation.ts';
import type { ControlReport } from '../../control/control-report.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { isoMinute, isoTime } from '../../units/iso-time.ts';
import { toLocal } from '../../units/local-clock.ts';
import type { LoggedReadings } from './logged-readings.ts';

/** What one rule would have done. */
export interface ReplayedRule {
  readonly name: string;
  readonly room: string | null;
  readonly fired: number;
  readonly per_week: number;
  readonly someone_home: number;
  readonly someone_awake: number;
  /** Firings with somebody at home and awake then or within the hour after. */
  readonly could_act: number;
  readonly held_back: number;
  readonly missed: number;
  /** What the logged window of its room did; null where that was not logged. */
  readonly windows: {
    readonly open_already: number;
    readonly opened_within_the_hour: number;
    readonly stayed_shut: number;
  } | null;
  /** Hours in which one of its readings was not known, so that it could not fire. */
  readonly unknown_hours: number;
}

/** One firing. */
export interface RuleEvent {
  readonly rule: string;
  readonly at: string;
  /** The same on the home's clock, "2025-02-03 10:20". */
  readonly local: string;
  readonly someone_home: boolean;
  readonly someone_awake: boolean;
  readonly window: WindowThen;
}

type WindowThen = 'open already' | 'opened within the hour' | 'stayed shut' | 'not logged';

interface Firing {
  readonly rule: number;
  readonly step: number;
  readonly home: boolean;
  readonly awake: boolean;
}

/** Rules and their firings beside what the log's windows did. */
export function rulesReplayed(
  { home, household, automation, dt }: PreparedPlan,
  readings: LoggedReadings,
  { rules: counts }: ControlReport,
  firings: readonly Firing[],
  { start, steps }: { readonly start: number; readonly steps: number },
): { readonly rules: readonly ReplayedRule[]; readonly events: readonly RuleEvent[] } {
  const inHour = Math.round(3600 / dt);
  const events = firings.map(({ rule, step, home: someone, awake }) => ({
    rule: automation.rules[rule]!.name,
    at: isoTime(start + step * dt),
    local: isoMinute(toLocal(household.clock, start + step * dt)),
    someone_home: someone,
    someone_awake: awake,
    window: windowThen(readings, roomOf(automation.rules[rule]!), step, inHour),
  }));
  const rules = automation.rules.map((rule, r) => {
    const count = counts[r]!;
    const room = roomOf(rule);
    const own = events.filter((_, k) => firings[k]!.rule === r);
    return {
      name: rule.name,
      room: room < 0 ? null : home.rooms[room]!.name,
      fired: count.fired,
      per_week: (count.fired * 168 * 3600) / (steps * dt),
      someone_home: count.someoneHome,
      someone_awake: count.someoneAwake,
      could_act: count.couldAct,
      held_back: count.heldBack,
      missed: count.missed,
      windows: windowsOf(own, readings, room),
      unknown_hours: (unknownSteps(rule, readings, home.species, steps) * dt) / 3600,
    };
  });
  return { rules, events };
}

function windowsOf(events: readonly RuleEvent[], { rooms }: LoggedReadings, room: number) {
  if (room < 0 || rooms[room]!.window === null) return null;
  const times = (what: WindowThen) => events.filter(({ window }) => window === what).length;
  return {
    open_already: times('open already'),
    opened_within_the_hour: times('opened within the hour'),
    stayed_shut: times('stayed shut'),
  };
}

/** What the window of a room did in the hour after a step. */
function windowThen(
  { rooms }: LoggedReadings,
  room: number,
  step: number,
  inHour: number,
): WindowThen {
  const window = room < 0 ? null : rooms[room]!.window;
  if (window === null || Number.isNaN(window[step]!)) return 'not logged';
  if (window[step]! > 0) return 'open already';
  const opened = window.subarray(step, step + inHour + 1).some((share) => share > 0);
  return opened ? 'opened within the hour' : 'stayed shut';
}

/** Steps in which some reading of a rule is not known. */
function unknownSteps(
  { all }: Rule,
  { rooms, outdoors }: LoggedReadings,
  species: readonly { readonly name: string }[],
  steps: number,
): number {
  const columns = all.flatMap(({ quantity, room }) => {
    const air = room < 0 ? outdoors : rooms[room]!;
    if (quantity === 'temperature') return [air.temperature];
    if (quantity === 'relative humidity') return [air.relativeHumidity];
    if (quantity === 'absolute humidity' || quantity === 'dew point') return [air.absoluteHumidity];
    if (quantity === 'humidity above outdoors')
      return [air.absoluteHumidity, outdoors.absoluteHumidity];
    const q = species.findIndex(({ name }) => name === quantity);
    return q < 0 ? [] : [air.species[q]!];
  });
  let unknown = 0;
  for (let k = 0; k < steps; k++) if (columns.some((values) => Number.isNaN(values[k]!))) unknown++;
  return unknown;
}

const roomOf = ({ room, all }: Rule): number =>
  room ?? all.find((one) => one.room >= 0)?.room ?? -1;
