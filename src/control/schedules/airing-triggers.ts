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

/**
 * Each end of an activity that took place, a given time later, to the nearest step; if it starts again
 * meanwhile, the wait is for its next end. Ends that are due in the same step come up once. Who leaves
 * ends what needs somebody at home.
 */
function endsOfActivities(habits: readonly AiringHabit[], up: Uint8Array, context: ControlContext) {
  const { household, moment, dt } = context;
  const asks = habits.flatMap(({ after }, j) =>
    after.by === 'activity'
      ? [{ j, activity: household.activities[after.activity]!, runOn: 0, later: after.later }]
      : [],
  );
  const times = createActivityTimes(asks, context);
  const endings = asks.map(({ j, later }) => ({
    ...{ habit: j, later, goesOn: false, due: Number.POSITIVE_INFINITY },
  }));

  /** @returns whether the wait before it was over */
  const starts = (ending: Ending, at: number): boolean => {
    const over = ending.due < at;
    ending.goesOn = true;
    ending.due = Number.POSITIVE_INFINITY;
    return over;
  };

  const ends = (ending: Ending, at: number): void => {
    ending.goesOn = false;
    ending.due = at + ending.later;
  };

  /** Go through what begins and ends in the step at hand. */
  const follow = (ending: Ending, n: number): boolean => {
    const { utc } = moment;
    if (times.going[n] === 0) {
      if (ending.goesOn) ends(ending, utc);
      return false;
    }
    let over = false;
    for (const { from, to } of times.stretches[n]!) {
      if (from >= utc + dt || to <= utc) continue;
      if (!ending.goesOn && starts(ending, Math.max(utc, from))) over = true;
      if (to <= utc + dt) ends(ending, to);
    }
    return over;
  };

  const step = (): void => {
    times.follow();
    for (let n = 0; n < endings.length; n++) {
      const ending = endings[n]!;
      const over = follow(ending, n);
      const isDue = ending.due <= moment.middle;
      if (isDue) ending.due = Number.POSITIVE_INFINITY;
      up[ending.habit] = isDue || over ? 1 : 0;
    }
  };
  return { beginDay: times.beginDay, step };
}

/** An activity whose ends somebody airs after, as the time loop goes by it. */
interface Ending {
  readonly habit: number;
  readonly later: number;
  goesOn: boolean;
  /** When it comes up; Infinity for not. [s UTC] */
  due: number;
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
