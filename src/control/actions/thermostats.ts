import type { Home } from '../../home/home.ts';
import { SECONDS_PER_DAY } from '../../units/local-clock.ts';
import type { Automation, Thermostat } from '../automation.ts';
import type { Household } from '../household.ts';
import type { Commands, Observation } from '../observations.ts';
import type { Presence } from '../sensors/presence.ts';
import { gateIsOpen } from './gate-is-open.ts';
import { switchedOn } from './switched-on.ts';
import { createWarmUp } from './warm-up.ts';

export interface Thermostats {
  /**
   * A setting that somebody or a rule asks for in this step, one per room; NaN for none. [°C]
   * It takes the place of programme and gate; lock-out, frost guard and the sensor's faults stay.
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
   *                         opened; Infinity while all are shut [s UTC]
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
 * the gate and its hold-off, warm-up, what a rule asks for, lock-out by an open window, frost guard.
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
  const rooms = home.rooms.map((_, i) => createRoomState(automation.thermostats[i]!));
  const perDay = Math.round(SECONDS_PER_DAY / dt);
  const warmUp = createWarmUp(household, automation.thermostats, dt, perDay);
  const { target } = warmUp;
  const asked = new Float64Array(rooms.length).fill(Number.NaN);
  const settings = new Float64Array(rooms.length);
  const goals = new Float64Array(rooms.length);
  let begin = 0;
  let taken = 0;

  /** Programme or `otherwise` by the gate and its hold-off. */
  const setByGate = (i: number, s: number, programme: Float64Array, presence: Presence): void => {
    const room = rooms[i]!;
    const now = begin + s * dt;
    const isOpen = gateIsOpen(room.gate, i, presence, room.windowOpen);
    if (isOpen) room.heldUntil = now + dt + room.holdOff;
    settings[i] = isOpen || now < room.heldUntil ? programme[i]! : room.otherwise;
  };

  const setByWarmUp = (i: number, s: number, temperature: Float64Array): void => {
    const room = rooms[i]!;
    warmUp.decide(s, i, settings, temperature);
    const to = target[i]!;
    const idle = to === Number.NEGATIVE_INFINITY || to < settings[i]!;
    if (idle || (room.windowOpen && room.gate.windowsShut)) return;
    // Whoever comes a little late finds the room still warm: the hold-off counts from here too.
    room.heldUntil = Math.max(room.heldUntil, begin + s * dt + dt + room.holdOff);
    settings[i] = to;
  };

  /** What a rule asks for, lock-out by an open window, frost guard. */
  const override = (i: number, s: number, openSince: Float64Array): void => {
    const room = rooms[i]!;
    if (!Number.isNaN(asked[i]!)) settings[i] = asked[i]!;
    if (begin + s * dt - openSince[i]! >= room.windowDelay) settings[i] = Number.NEGATIVE_INFINITY;
    settings[i] = Math.max(settings[i]!, room.frostGuard);
    goals[i] = settings[i]! - room.bias;
  };

  const command = (i: number, { temperature, output }: Observation, commands: Commands): void => {
    const room = rooms[i]!;
    const { bias, valveBias, deadband } = room;
    let setting = settings[i]!;
    if (deadband > 0) {
      const reading = temperature[i]! + bias + valveBias * output[i]!;
      room.on = switchedOn(room.on, reading, setting, deadband);
      setting += room.on ? deadband / 2 : -deadband / 2;
    }
    commands.setpoints[i] = setting - bias;
    commands.band[i] = room.band;
  };

  return {
    asked,
    beginDay(start, steps) {
      begin = start;
      warmUp.beginDay(start, steps);
    },
    step(s, observed, presence, windowOpenSince, commands) {
      for (let i = 0; i < rooms.length; i++) {
        const room = rooms[i]!;
        room.windowOpen = windowOpenSince[i]! <= begin + s * dt;
        setByGate(i, s, commands.setpoints, presence);
        if (room.leads) setByWarmUp(i, s, observed.temperature);
        override(i, s, windowOpenSince);
        if (room.learns) warmUp.watch(i, taken, observed, goals, room.windowOpen);
        command(i, observed, commands);
      }
      taken++;
    },
  };
}

/** A thermostat as the time loop goes by it, with what it remembers. */
function createRoomState(thermostat: Thermostat) {
  return {
    gate: thermostat.gate,
    otherwise: thermostat.otherwise,
    holdOff: thermostat.holdOff,
    frostGuard: thermostat.frostGuard,
    windowDelay: thermostat.windowDelay ?? Number.POSITIVE_INFINITY,
    bias: thermostat.bias,
    valveBias: thermostat.valveBias,
    band: thermostat.proportionalBand + thermostat.valveBias,
    deadband: thermostat.deadband,
    leads: thermostat.lead.by !== 'none',
    learns: thermostat.lead.by === 'learned',
    windowOpen: false,
    heldUntil: Number.NEGATIVE_INFINITY,
    on: false,
  };
}
