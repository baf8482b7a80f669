import type { DeviceControl } from '../automation.ts';
import type { Surroundings } from '../control-context.ts';
import { createActivityTimes } from '../schedules/activity-times.ts';
import { createLines } from '../schedules/week-schedule.ts';
import type { Rules } from './rules.ts';

/** How much of a device its control asks for, before gates and timers have their say. */
export interface Wanted {
  readonly beginDay: (start: number, steps: number) => void;
  /** Share of full output in the step at hand, to be asked for once a step. [-] */
  readonly share: () => number;
}

/**
 * @param needs  number of the control's condition among `met`, where it goes by a reading
 * @param rules  a rule that says stop beats one that says run, and both beat the control itself
 */
export function createWanted(
  { by, device }: DeviceControl,
  needs: readonly number[],
  met: Uint8Array,
  rules: Pick<Rules, 'run' | 'stop'>,
  around: Surroundings,
): Wanted {
  const { beginDay, share } = byItself(by, needs, met, around);
  return {
    beginDay,
    share: () => {
      const own = share();
      if (rules.stop[device] === 1) return 0;
      return rules.run[device] === 1 ? 1 : own;
    },
  };
}

function byItself(
  by: DeviceControl['by'],
  needs: readonly number[],
  met: Uint8Array,
  around: Surroundings,
): Wanted {
  switch (by.kind) {
    case 'always':
      return { beginDay: nothing, share: () => 1 };
    case 'clock': {
      const line = createLines([by.line], around.household.clock, around.dt);
      return { beginDay: line.beginDay, share: () => line.at(around.moment.s, 0) };
    }
    case 'reading': {
      const condition = needs[0]!;
      return { beginDay: nothing, share: () => met[condition]! };
    }
    case 'activity':
      return withActivities(by.activities, by.runOn, around);
    case 'rule':
      return { beginDay: nothing, share: () => 0 };
  }
}

function withActivities(which: readonly number[], runOn: number, around: Surroundings): Wanted {
  const all = which.map((a) => createActivityTimes(around.household.activities[a]!, runOn, around));
  return {
    beginDay: (start, steps) => {
      for (const times of all) times.beginDay(start, steps);
    },
    share: () => {
      let most = 0;
      for (let k = 0; k < all.length; k++) {
        all[k]!.step();
        most = Math.max(most, all[k]!.withRunOn);
      }
      return most;
    },
  };
}

function nothing(): void {}
