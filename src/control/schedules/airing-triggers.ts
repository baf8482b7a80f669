import type { AiringHabit } from '../automation.ts';
import type { ControlContext } from '../control-context.ts';
import { allMet } from '../sensors/conditions.ts';
import type { Span } from '../span.ts';
import { createActivityTimes } from './activity-times.ts';

/** When habits come up. */
export interface AiringTriggers {
  readonly beginDay: (start: number, steps: number) => void;
  /** 1 for each habit that comes up in the step at hand; for readings: that they ask for. */
  readonly up: Uint8Array;
  /** Once a step, before `up` is looked at. */
  readonly step: () => void;
}

/** @param asks  each habit's conditions among `met`, where it goes by readings */
export function createAiringTriggers(
  habits: readonly AiringHabit[],
  asks: readonly Span[],
  met: Uint8Array,
  context: ControlContext,
): AiringTriggers {
  const up = new Uint8Array(habits.length);
  const readings = numbersOf(habits, 'readings');
  const endings = endsOfActivities(habits, up, context);
  const firstOnesUp = wakings(habits, up, context);
  const step = (): void => {
    for (let n = 0; n < readings.length; n++) {
      const j = readings[n]!;
      up[j] = allMet(met, asks[j]!) ? 1 : 0;
    }
    endings.step();
    firstOnesUp();
  };
  return { beginDay: endings.beginDay, up, step };
}

/** The activity's last moment lies in the step before; if it starts again meanwhile, the wait does too. */
function endsOfActivities(habits: readonly AiringHabit[], up: Uint8Array, context: ControlContext) {
  const { household, moment } = context;
  const asks = habits.flatMap(({ after }, j) =>
    after.by === 'activity'
      ? [{ j, activity: household.activities[after.activity]!, runOn: 0, later: after.later }]
      : [],
  );
  const habit = Int32Array.from(asks, ({ j }) => j);
  const later = Float64Array.from(asks, (ask) => ask.later);
  const { beginDay, follow, going } = createActivityTimes(asks, context);
  const wentOn = new Uint8Array(asks.length);
  const due = new Float64Array(asks.length).fill(Number.POSITIVE_INFINITY);
  const step = (): void => {
    follow();
    const { utc } = moment;
    for (let n = 0; n < habit.length; n++) {
      const goesOn = going[n]! > 0;
      if (goesOn) due[n] = Number.POSITIVE_INFINITY;
      else if (wentOn[n] === 1) due[n] = utc + later[n]!;
      wentOn[n] = goesOn ? 1 : 0;
      const isDue = utc >= due[n]!;
      if (isDue) due[n] = Number.POSITIVE_INFINITY;
      up[habit[n]!] = isDue ? 1 : 0;
    }
  };
  return { beginDay, step };
}

/** Once a night, at the first whole step that one sleeper less spends asleep in the room. */
function wakings(
  habits: readonly AiringHabit[],
  up: Uint8Array,
  { moment }: ControlContext,
): () => void {
  const habit = numbersOf(habits, 'waking');
  const room = Int32Array.from(habit, (j) => roomOf(habits[j]!));
  const most = new Float64Array(habit.length);
  const done = new Uint8Array(habit.length);
  return () => {
    const { day, s } = moment;
    const { occupants, awake, rooms } = day;
    for (let n = 0; n < habit.length; n++) {
      const at = s * rooms + room[n]!;
      const sleepers = occupants[at]! - awake[at]!;
      const isUp = done[n] === 0 && sleepers <= most[n]! - 1 + ROUNDING;
      up[habit[n]!] = isUp ? 1 : 0;
      if (isUp) done[n] = 1;
      most[n] = Math.max(most[n]!, sleepers);
      if (sleepers >= ROUNDING) continue;
      most[n] = 0;
      done[n] = 0;
    }
  };
}

function roomOf({ after }: AiringHabit): number {
  return after.by === 'waking' ? after.room : -1;
}

/** Numbers of the habits of one kind. */
function numbersOf(habits: readonly AiringHabit[], by: AiringHabit['after']['by']): Int32Array {
  return Int32Array.from(habits.flatMap(({ after }, j) => (after.by === by ? [j] : [])));
}

const ROUNDING = 1e-9;
