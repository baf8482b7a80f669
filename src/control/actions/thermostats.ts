import type { Home } from '../../home/home.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Automation, Thermostat } from '../automation.ts';
import type { Household } from '../household.ts';
import type { Commands, Observation } from '../observations.ts';
import { createHeatingCalendar, IN_SEASON, ON_HOLIDAY } from '../schedules/heating-calendar.ts';
import type { Presence } from '../sensors/presence.ts';
import { gateIsOpen } from './gate-is-open.ts';
import { switchedOn } from './switched-on.ts';
import { createWarmUp } from './warm-up.ts';

export interface Thermostats {
  /**
   * A setting that somebody or a rule asks for in this step, one per room; NaN for none. [°C]
   * It takes the place of programme, gate and holiday setback; lock-out, heating season, frost guard and the
   * sensor's faults stay.
   */
  readonly asked: Float64Array;
  /** @param start  instant at which the day's first step begins [s UTC] */
  readonly beginDay: (start: number, steps: number) => void;
  /**
   * Decide for step `s`: turns each room's scheduled setpoint in `commands` into what the room is to
   * be held at, and sets the width of its proportional band. To be called once a step, in order.
   * Allocates nothing.
   *
   * @param windowOpenSince  per room: instant at which the first of the windows that stand open was
   *                         opened; NaN while all are shut [s UTC]
   */
  readonly step: (
    s: number,
    observed: Observation,
    presence: Presence,
    windowOpenSince: Float64Array,
    commands: Commands,
  ) => void;
}

/**
 * One thermostat a room. In this order, the later having the last word: programme or `otherwise` by
 * the gate and its hold-off, holiday setback, warm-up, what a rule asks for, lock-out by an open window,
 * heating season, frost guard. Hold-off and the delay of a lock-out last to the nearest step.
 * Where one room calls for all, the others get heat only in the steps in which it does; its thermostat
 * needs a deadband. The plain valves of those others know neither season nor holidays.
 *
 * A sensor that reads too much holds the room so much cooler. Where it reads more the more heat its
 * emitter gives, the room settles below the setting in proportion to that heat, just as under a
 * proportional valve, so both widths make up one band.
 */
export function createThermostats(
  home: Home,
  household: Household,
  automation: Automation,
  dt: number,
): Thermostats {
  const gates = automation.thermostats.map(({ gate }) => gate);
  const columns = createColumns(automation.thermostats);
  const perDay = Math.round(SECONDS_PER_DAY / dt);
  const warmUp = createWarmUp(household, automation, dt, perDay);
  const calendar = createHeatingCalendar(automation, household, dt);
  const { today } = calendar;
  const holidaySetpoint = automation.holidaySetback?.setpoint ?? Number.POSITIVE_INFINITY;
  const { target } = warmUp;
  const asked = new Float64Array(home.rooms.length).fill(Number.NaN);
  const settings = new Float64Array(home.rooms.length);
  const goals = new Float64Array(home.rooms.length);
  const caller = automation.callRoom ?? -1;
  const order = callerFirst(automation.thermostats.length, caller);
  const half = dt / 2;
  let begin = 0;
  let taken = 0;

  /** Programme or `otherwise` by the gate and its hold-off, no higher than holidays allow. */
  const setByGate = (i: number, s: number, programme: Float64Array, presence: Presence): void => {
    const { windowOpen, heldUntil, holdOff, otherwise } = columns;
    const now = begin + s * dt;
    const isOpen = gateIsOpen(gates[i]!, i, presence, windowOpen[i] === 1);
    if (isOpen) heldUntil[i] = now + dt + holdOff[i]!;
    settings[i] = isOpen || now + half < heldUntil[i]! ? programme[i]! : otherwise[i]!;
    if (today[ON_HOLIDAY] === 1 && knowsDates(i) && settings[i]! > holidaySetpoint) {
      settings[i] = holidaySetpoint;
    }
  };

  /** False for a plain valve beside the thermostat that calls. */
  const knowsDates = (i: number): boolean => caller < 0 || i === caller;

  const setByWarmUp = (i: number, s: number, felt: Float64Array): void => {
    const { windowOpen, heldUntil, holdOff } = columns;
    warmUp.decide(s, i, settings, felt);
    const to = target[i]!;
    const idle = to === Number.NEGATIVE_INFINITY || to < settings[i]!;
    if (idle || (windowOpen[i] === 1 && gates[i]!.windowsShut)) return;
    // Whoever comes a little late finds the room still warm: the hold-off counts from here too.
    heldUntil[i] = Math.max(heldUntil[i]!, begin + s * dt + dt + holdOff[i]!);
    settings[i] = to;
  };

  /** What a rule asks for, lock-out by an open window, heating season, frost guard. */
  const override = (i: number, s: number, openSince: Float64Array): void => {
    const { windowDelay, frostGuard, bias } = columns;
    if (!Number.isNaN(asked[i]!)) settings[i] = asked[i]!;
    const openFor = begin + s * dt + half - openSince[i]!;
    if (openFor >= windowDelay[i]!) settings[i] = Number.NEGATIVE_INFINITY;
    if (today[IN_SEASON] === 0 && knowsDates(i)) settings[i] = Number.NEGATIVE_INFINITY;
    settings[i] = Math.max(settings[i]!, frostGuard[i]!);
    goals[i] = settings[i]! - bias[i]!;
  };

  const command = (i: number, { felt, output }: Observation, commands: Commands): void => {
    const { bias, valveBias, deadband, band, on } = columns;
    const between = deadband[i]!;
    let setting = settings[i]!;
    if (between > 0) {
      const reading = felt[i]! + bias[i]! + valveBias[i]! * output[i]!;
      const isOn = switchedOn(on[i] === 1, reading - setting, between / 2);
      on[i] = isOn ? 1 : 0;
      setting += isOn ? between / 2 : -between / 2;
    }
    commands.setpoints[i] = setting - bias[i]!;
    commands.band[i] = band[i]!;
  };

  return {
    asked,
    beginDay(start, steps) {
      begin = start;
      calendar.beginDay(start);
      warmUp.beginDay(start, steps);
    },
    step(s, observed, presence, windowOpenSince, commands) {
      const { windowOpen, leads, learns, on } = columns;
      calendar.step(s, observed, commands.setpoints, presence.awake);
      for (let n = 0; n < order.length; n++) {
        const i = order[n]!;
        windowOpen[i] = windowOpenSince[i]! <= begin + s * dt ? 1 : 0;
        setByGate(i, s, commands.setpoints, presence);
        if (leads[i] === 1) setByWarmUp(i, s, observed.felt);
        override(i, s, windowOpenSince);
        if (learns[i] === 1) warmUp.watch(i, taken, observed, goals, windowOpen[i] === 1);
        command(i, observed, commands);
        // A plain valve opens as before, but nothing warm comes through it.
        if (caller >= 0 && on[caller] === 0 && i !== caller) {
          commands.setpoints[i] = Number.NEGATIVE_INFINITY;
        }
      }
      taken++;
    },
  };
}

/** Rooms in the order in which they are decided. */
function callerFirst(rooms: number, caller: number): Int32Array {
  const all = Int32Array.from({ length: rooms }, (_, i) => i);
  return all.sort((a, b) => Number(b === caller) - Number(a === caller));
}

/** Thermostats as the time loop goes by them, with what they remember; one number a room. */
function createColumns(thermostats: readonly Thermostat[]) {
  const column = (value: (one: Thermostat) => number) => Float64Array.from(thermostats, value);
  const flags = (is: (one: Thermostat) => boolean) =>
    Uint8Array.from(thermostats, (one) => (is(one) ? 1 : 0));
  return {
    otherwise: column((one) => one.otherwise),
    holdOff: column((one) => one.holdOff),
    frostGuard: column((one) => one.frostGuard),
    windowDelay: column((one) => one.windowDelay ?? Number.POSITIVE_INFINITY),
    bias: column((one) => one.bias),
    valveBias: column((one) => one.valveBias),
    band: column((one) => one.proportionalBand + one.valveBias),
    deadband: column((one) => one.deadband),
    leads: flags(({ lead }) => lead.by !== 'none'),
    learns: flags(({ lead }) => lead.by === 'learned'),
    windowOpen: flags(() => false),
    heldUntil: column(() => Number.NEGATIVE_INFINITY),
    on: flags(() => false),
  };
}
