import type { DeviceControl } from '../automation.ts';
import type { ControlContext } from '../control-context.ts';
import { createActivityTimes } from '../schedules/activity-times.ts';
import { createScheduleValues } from '../schedules/week-schedule.ts';
import type { Rules } from './rules.ts';

/** How much of a device its control asks for, before gates and timers have their say. */
export interface DeviceDemand {
  readonly beginDay: (start: number, steps: number) => void;
  /** Share of full output in the step at hand, to be asked for once a step. [-] */
  readonly share: () => number;
}

/**
 * @param needs  number of the control's condition among `met`, where it goes by a reading
 * @param rules  a rule that says stop beats one that says run, and both beat the control itself
 */
export function createDeviceDemand(
  { by, device }: DeviceControl,
  needs: readonly number[],
  met: Uint8Array,
  rules: Pick<Rules, 'run' | 'stop'>,
  context: ControlContext,
): DeviceDemand {
  const { beginDay, share } = byItself(by, needs, met, context);
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
  context: ControlContext,
): DeviceDemand {
  switch (by.kind) {
    case 'always':
      return { beginDay: nothing, share: () => 1 };
    case 'clock': {
      const line = createScheduleValues([by.schedule], context.household.clock, context.dt);
      return { beginDay: line.beginDay, share: () => line.at(context.moment.s, 0) };
    }
    case 'reading': {
      const condition = needs[0]!;
      return { beginDay: nothing, share: () => met[condition]! };
    }
    case 'activity':
      return withActivities(by.activities, by.runOn, context);
    case 'rule':
      return { beginDay: nothing, share: () => 0 };
  }
}

function withActivities(
  which: readonly number[],
  runOn: number,
  context: ControlContext,
): DeviceDemand {
  const all = which.map((a) =>
    createActivityTimes(context.household.activities[a]!, runOn, context),
  );
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
