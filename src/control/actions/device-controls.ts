import type { Automation, DeviceControl } from '../automation.ts';
import { type ControlContext, OUTDOOR, windowOpen } from '../control-context.ts';
import type { ControlReport } from '../control-report.ts';
import { fillArray } from '../fill-array.ts';
import type { Commands } from '../observations.ts';
import { createScheduleValues } from '../schedules/week-schedule.ts';
import type { ConditionIndex } from '../sensors/condition-index.ts';
import { createDeviceDemand } from './device-demand.ts';
import { gateIsOpen } from './gate-is-open.ts';
import type { Rules } from './rules.ts';
import { createRunTimer } from './run-timer.ts';

export interface DeviceControls {
  readonly beginDay: (start: number, steps: number) => void;
  /** Fill `orders.devices` and `orders.empty`; devices without a control stand still. */
  readonly step: (commands: Commands) => void;
  readonly startCounting: () => void;
  readonly report: () => ControlReport['devices'];
}

export function createDeviceControls(
  { deviceControls }: Automation,
  { devices: needs }: ConditionIndex,
  met: Uint8Array,
  rules: Pick<Rules, 'run' | 'stop'>,
  context: ControlContext,
): DeviceControls {
  const controls = deviceControls.map((control, k) =>
    createDeviceControl(control, needs[k]!, met, rules, context),
  );
  return {
    beginDay: (start, steps) => {
      for (const { beginDay } of controls) beginDay(start, steps);
    },
    step: (commands) => {
      fillArray(commands.devices, 0);
      fillArray(commands.empty, 0);
      for (let k = 0; k < controls.length; k++) controls[k]!.step(commands);
    },
    startCounting: () => {
      for (const { tally } of controls) {
        tally.starts = 0;
        tally.emptied = 0;
      }
    },
    report: () => controls.map(({ tally }, k) => ({ device: deviceControls[k]!.device, ...tally })),
  };
}

/**
 * Control of one device, which may run while its gate is open, the clock permits it and outdoor air is
 * dry enough, as far as its timers let it. A full tank stops it at once, whatever the timers say.
 */
function createDeviceControl(
  control: DeviceControl,
  needs: readonly number[],
  met: Uint8Array,
  rules: Pick<Rules, 'run' | 'stop'>,
  context: ControlContext,
) {
  const { device, gate, drierBy, emptiedByPeople } = control;
  const { moment, presence, windows } = context;
  const { room } = context.home.devices[device]!;
  const permitted = createScheduleValues([control.permitted], context.household.clock, context.dt);
  const demand = createDeviceDemand(control, needs, met, rules, context);
  const timer = createRunTimer(control);
  const tally = { starts: 0, emptied: 0 };

  const mayRun = (): boolean => {
    if (!gateIsOpen(gate, room, presence, windowOpen(windows, room))) return false;
    if (drierBy === null) return true;
    const { absoluteHumidity, outdoor } = moment.observed;
    return absoluteHumidity[room]! - outdoor[OUTDOOR.absoluteHumidity]! >= drierBy;
  };

  const step = ({ devices, empty }: Commands): void => {
    let full = moment.observed.full[device] === 1;
    if (full && (presence.awakeHome || !emptiedByPeople)) {
      if (empty[device] === 0) tally.emptied++;
      empty[device] = 1;
      full = false;
    }
    const asked = demand.share();
    const allowed = mayRun() ? Math.min(asked, permitted.at(moment.s, 0)) : 0;
    const wasRunning = timer.running;
    const share = timer.step(allowed, full, moment.utc);
    if (timer.running && !wasRunning) tally.starts++;
    devices[device] = Math.max(devices[device]!, share);
  };

  const beginDay = (start: number, steps: number): void => {
    permitted.beginDay(start, steps);
    demand.beginDay(start, steps);
  };
  return { beginDay, step, tally };
}
