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
  const rooms = home.rooms.length;
  const { thermostats } = automation;
  const warmUp = createWarmUp(household, thermostats, dt, Math.round(SECONDS_PER_DAY / dt));
  const asked = new Float64Array(rooms).fill(Number.NaN);
  const heldUntil = new Float64Array(rooms).fill(Number.NEGATIVE_INFINITY);
  const on = new Uint8Array(rooms);
  const goals = new Float64Array(rooms);
  let begin = 0;

  function byGate(
    thermostat: Thermostat,
    i: number,
    now: number,
    programme: number,
    presence: Presence,
    windowOpen: boolean,
  ): number {
    if (gateIsOpen(thermostat.gate, i, presence, windowOpen)) {
      heldUntil[i] = now + dt + thermostat.holdOff;
      return programme;
    }
    return now < heldUntil[i]! ? programme : thermostat.otherwise;
  }

  function warmedUp(
    thermostat: Thermostat,
    i: number,
    s: number,
    now: number,
    setting: number,
    t: number,
    windowOpen: boolean,
  ): number {
    if (thermostat.lead.by === 'none') return setting;
    warmUp.decide(s, i, now, setting, t + thermostat.bias);
    const to = warmUp.target[i]!;
    const idle = to === Number.NEGATIVE_INFINITY || to < setting;
    if (idle || (windowOpen && thermostat.gate.windowsShut)) return setting;
    // Whoever comes a little late finds the room still warm: the hold-off counts from here too.
    heldUntil[i] = Math.max(heldUntil[i]!, now + dt + thermostat.holdOff);
    return to;
  }

  return {
    asked,
    beginDay(start, steps) {
      begin = start;
      warmUp.beginDay(start, steps);
    },
    step(s, observed, presence, windowOpenSince, commands) {
      const now = begin + s * dt;
      for (let i = 0; i < rooms; i++) {
        const thermostat = thermostats[i]!;
        const t = observed.temperature[i]!;
        const since = windowOpenSince[i]!;
        const windowOpen = since <= now;
        let setting = byGate(thermostat, i, now, commands.setpoints[i]!, presence, windowOpen);
        setting = warmedUp(thermostat, i, s, now, setting, t, windowOpen);
        if (!Number.isNaN(asked[i]!)) setting = asked[i]!;
        const { windowDelay } = thermostat;
        if (windowDelay !== null && now - since >= windowDelay) setting = Number.NEGATIVE_INFINITY;
        setting = Math.max(setting, thermostat.frostGuard);

        const { bias, valveBias, deadband } = thermostat;
        goals[i] = setting - bias;
        if (thermostat.lead.by === 'learned') warmUp.watch(i, now, observed, goals, windowOpen);
        if (deadband > 0) {
          const reading = t + bias + valveBias * observed.output[i]!;
          const isOn = switchedOn(on[i] === 1, reading, setting, deadband);
          on[i] = isOn ? 1 : 0;
          setting += isOn ? deadband / 2 : -deadband / 2;
        }
        commands.setpoints[i] = setting - bias;
        commands.band[i] = thermostat.proportionalBand + valveBias;
      }
    },
  };
}
