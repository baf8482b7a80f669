import type { AiringHabit } from '../automation.ts';
import type { Surroundings } from '../control-context.ts';
import { allMet } from '../sensors/conditions.ts';
import { createActivityTimes } from './activity-times.ts';

/** When a habit comes up. */
export interface Occasion {
  readonly beginDay: (start: number, steps: number) => void;
  /** Once a step: does it come up now? For readings: do they ask? */
  readonly comesUp: () => boolean;
}

/** @param asks  numbers of the habit's conditions among `met`, where it goes by readings */
export function createOccasion(
  { after }: AiringHabit,
  asks: readonly number[],
  met: Uint8Array,
  around: Surroundings,
): Occasion {
  if (after.by === 'activity') return endOfActivity(after.activity, after.later, around);
  if (after.by === 'waking') return { beginDay, comesUp: firstOneUp(after.room, around) };
  return { beginDay, comesUp: () => allMet(met, asks) };
}

/** The activity's last moment lies in the step before; if it starts again meanwhile, the wait does too. */
function endOfActivity(activity: number, later: number, around: Surroundings): Occasion {
  const { household, moment } = around;
  const times = createActivityTimes(household.activities[activity]!, 0, around);
  let goesOn = false;
  let due = Number.POSITIVE_INFINITY;
  const comesUp = (): boolean => {
    const before = goesOn;
    times.step();
    goesOn = times.going > 0;
    if (goesOn) due = Number.POSITIVE_INFINITY;
    else if (before) due = moment.utc + later;
    if (moment.utc < due) return false;
    due = Number.POSITIVE_INFINITY;
    return true;
  };
  return { beginDay: times.beginDay, comesUp };
}

/** Once a night, at the first whole step that one sleeper less spends asleep in the room. */
function firstOneUp(room: number, { moment }: Surroundings): () => boolean {
  let most = 0;
  let done = false;
  return () => {
    const { day, s } = moment;
    const at = s * day.rooms + room;
    const sleepers = day.occupants[at]! - day.awake[at]!;
    const up = !done && sleepers <= most - 1 + ROUNDING;
    if (up) done = true;
    most = Math.max(most, sleepers);
    if (sleepers < ROUNDING) {
      most = 0;
      done = false;
    }
    return up;
  };
}

function beginDay(): void {}

const ROUNDING = 1e-9;
