import type { DeviceControl } from '../automation.ts';
import type { ControlContext } from '../control-context.ts';
import { createActivityTimes } from '../schedules/activity-times.ts';
import { createScheduleValues } from '../schedules/week-schedule.ts';
import type { Span } from '../span.ts';
import type { Rules } from './rules.ts';

/** How much of devices their controls ask for, before gates and timers have their say. */
export interface DeviceDemand {
  readonly beginDay: (start: number, steps: number) => void;
  /** Share of full output of each control in the step at hand, to be asked for once a step. [-] */
  readonly shares: () => Float64Array;
}

/**
 * @param needs  per control: its condition among `met`, where it goes by a reading
 * @param rules  a rule that says stop beats one that says run, and both beat the control itself
 */
export function createDeviceDemand(
  controls: readonly DeviceControl[],
  needs: readonly Span[],
  met: Uint8Array,
  { run, stop }: Pick<Rules, 'run' | 'stop'>,
  context: ControlContext,
): DeviceDemand {
  const own = Float64Array.from(controls, ({ by }) => (by.kind === 'always' ? 1 : 0));
  const columns = {
    device: Int32Array.from(controls, (control) => control.device),
    own,
    run,
    stop,
    shares: new Float64Array(controls.length),
  };
  const readings = byReadings(controls, needs, met, own);
  const clock = byClock(controls, own, context);
  const activities = byActivities(controls, own, context);
  return {
    beginDay: (start, steps) => {
      clock.beginDay(start, steps);
      activities.beginDay(start, steps);
    },
    shares: () => {
      readings();
      clock.step();
      activities.step();
      heedRules(columns);
      return columns.shares;
    },
  };
}

function heedRules({ device, own, run, stop, shares }: Columns): void {
  for (let k = 0; k < device.length; k++) {
    const d = device[k]!;
    shares[k] = stop[d] === 1 ? 0 : run[d] === 1 ? 1 : own[k]!;
  }
}

interface Columns {
  readonly device: Int32Array;
  readonly own: Float64Array;
  readonly run: Uint8Array;
  readonly stop: Uint8Array;
  readonly shares: Float64Array;
}

function byReadings(
  controls: readonly DeviceControl[],
  needs: readonly Span[],
  met: Uint8Array,
  own: Float64Array,
): () => void {
  const which = numbersOf(controls, 'reading');
  const condition = which.map((k) => needs[k]!.from);
  return () => copyMet(own, which, met, condition);
}

function copyMet(
  own: Float64Array,
  which: Int32Array,
  met: Uint8Array,
  condition: Int32Array,
): void {
  for (let n = 0; n < which.length; n++) own[which[n]!] = met[condition[n]!]!;
}

function byClock(controls: readonly DeviceControl[], own: Float64Array, context: ControlContext) {
  const which = numbersOf(controls, 'clock');
  const schedules = controls.flatMap(({ by }) => (by.kind === 'clock' ? [by.schedule] : []));
  const { household, moment, dt } = context;
  const { beginDay, values } = createScheduleValues(schedules, household.clock, dt);
  const step = (): void => {
    const at = moment.s * which.length;
    for (let n = 0; n < which.length; n++) own[which[n]!] = values[at + n]!;
  };
  return { beginDay, step };
}

/** With whichever of its activities goes on the most. */
function byActivities(
  controls: readonly DeviceControl[],
  own: Float64Array,
  context: ControlContext,
) {
  const { activities } = context.household;
  const asks = controls.flatMap(({ by }, k) =>
    by.kind === 'activity'
      ? by.activities.map((a) => ({ k, activity: activities[a]!, runOn: by.runOn }))
      : [],
  );
  const which = Int32Array.from(asks, ({ k }) => k);
  const { beginDay, follow, withRunOn } = createActivityTimes(asks, context);
  const step = (): void => {
    if (which.length === 0) return;
    follow();
    for (let n = 0; n < which.length; n++) own[which[n]!] = 0;
    for (let n = 0; n < which.length; n++) {
      const k = which[n]!;
      own[k] = Math.max(own[k]!, withRunOn[n]!);
    }
  };
  return { beginDay, step };
}

/** Numbers of the controls of one kind. */
function numbersOf(controls: readonly DeviceControl[], kind: DeviceControl['by']['kind']) {
  return Int32Array.from(controls.flatMap(({ by }, k) => (by.kind === kind ? [k] : [])));
}
