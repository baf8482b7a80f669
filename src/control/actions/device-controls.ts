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
import { createRunTimer, runAt } from './run-timer.ts';

export interface DeviceControls {
  readonly beginDay: (start: number, steps: number) => void;
  /** Fill `commands.devices` and `commands.empty`; devices without a control stand still. */
  readonly step: (commands: Commands) => void;
  readonly startCounting: () => void;
  readonly report: () => ControlReport['devices'];
}

/**
 * A device may run while its gate is open, the clock permits it and outdoor air is dry enough, as far
 * as its timers let it. A full tank stops it at once, whatever the timers say.
 */
export function createDeviceControls(
  { deviceControls }: Automation,
  { devices: needs }: ConditionIndex,
  met: Uint8Array,
  rules: Pick<Rules, 'run' | 'stop'>,
  context: ControlContext,
): DeviceControls {
  const { moment, presence, windows, home, household, dt } = context;
  const controls = deviceControls.map((control) => createControlState(control, home));
  const permitted = createScheduleValues(
    deviceControls.map((control) => control.permitted),
    household.clock,
    dt,
  );
  const demand = createDeviceDemand(deviceControls, needs, met, rules, context);

  /** @returns whether the tank is still full */
  const emptyTank = (control: ControlState, empty: Uint8Array): boolean => {
    const { device } = control;
    if (moment.observed.full[device] === 0) return false;
    if (!presence.awakeHome && control.emptiedByPeople) return true;
    if (empty[device] === 0) control.emptied++;
    empty[device] = 1;
    return false;
  };

  const mayRun = ({ gate, room, drierBy }: ControlState): boolean => {
    if (!gateIsOpen(gate, room, presence, windowOpen(windows.open, room))) return false;
    if (Number.isNaN(drierBy)) return true;
    const { absoluteHumidity, outdoor } = moment.observed;
    return absoluteHumidity[room]! - outdoor[OUTDOOR.absoluteHumidity]! >= drierBy;
  };

  const step = ({ devices, empty }: Commands): void => {
    fillArray(devices, 0);
    fillArray(empty, 0);
    if (controls.length === 0) return;
    const asked = demand.shares();
    const { values } = permitted;
    const at = moment.s * controls.length;
    for (let k = 0; k < controls.length; k++) {
      const control = controls[k]!;
      const { device, timer } = control;
      timer.wanted = mayRun(control) ? Math.min(asked[k]!, values[at + k]!) : 0;
      runAt(timer, moment, emptyTank(control, empty), dt);
      if (timer.share > devices[device]!) devices[device] = timer.share;
    }
  };

  return {
    beginDay: (start, steps) => {
      permitted.beginDay(start, steps);
      demand.beginDay(start, steps);
    },
    step,
    startCounting: () => {
      for (const control of controls) {
        control.emptied = 0;
        control.timer.starts = 0;
      }
    },
    report: () =>
      controls.map(({ device, timer, emptied }) => ({ device, starts: timer.starts, emptied })),
  };
}

/** A control as the time loop goes by it, with what it counts. */
function createControlState(control: DeviceControl, home: ControlContext['home']) {
  return {
    device: control.device,
    room: home.devices[control.device]!.room,
    gate: control.gate,
    /** NaN for no matter. [g/m3] */
    drierBy: control.drierBy ?? Number.NaN,
    emptiedByPeople: control.emptiedByPeople,
    timer: createRunTimer(control),
    emptied: 0,
  };
}

type ControlState = ReturnType<typeof createControlState>;
