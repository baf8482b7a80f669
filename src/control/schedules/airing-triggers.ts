import type { AiringHabit } from '../automation.ts';
import type { ControlContext } from '../control-context.ts';
import { allMet } from '../sensors/conditions.ts';
import { createActivityTimes } from './activity-times.ts';

/** When a habit comes up. */
export interface AiringTrigger {
  readonly beginDay: (start: number, steps: number) => void;
  /** Once a step: does it come up now? For readings: do they ask? */
  readonly comesUp: () => boolean;
}

/** @param asks  numbers of the habit's conditions among `met`, where it goes by readings */
export function createAiringTrigger(
  { after }: AiringHabit,
  asks: readonly number[],
  met: Uint8Array,
  context: ControlContext,
): AiringTrigger {
  if (after.by === 'activity') return endOfActivity(after.activity, after.later, context);
  if (after.by === 'waking') return { beginDay, comesUp: firstOneUp(after.room, context) };
  return { beginDay, comesUp: () => allMet(met, asks) };
}

/** The activity's last moment lies in the step before; if it starts again meanwhile, the wait does too. */
function endOfActivity(activity: number, later: number, context: ControlContext): AiringTrigger {
  const { household, moment } = context;
  const times = createActivityTimes(household.activities[activity]!, 0, context);
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
function firstOneUp(room: number, { moment }: ControlContext): () => boolean {
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
