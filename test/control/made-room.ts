import { createThermostats } from '../../src/control/actions/thermostats.ts';
import {
  type Automation,
  PLAIN_THERMOSTAT,
  type Thermostat,
} from '../../src/control/automation.ts';
import type { Household } from '../../src/control/household.ts';
import {
  createCommands,
  createObservation,
  followSchedules,
} from '../../src/control/observations.ts';
import { createPresence } from '../../src/control/sensors/presence.ts';
import { noAutomation } from './no-automation.ts';
import { DAY, HOME, LIVING, laidOut, MONDAY } from './people.ts';

/** What becomes of the living room under one thermostat, step by step. */
export interface Watched {
  /** Setting handed to the engine [°C], and its proportional band [K]. */
  readonly setpoints: number[];
  readonly bands: number[];
  /** At the start of each step [°C], and heat over the most in it [-]. */
  readonly temperatures: number[];
  readonly outputs: number[];
}

/**
 * A made first-order room: left alone it goes to `outdoors`, heated fully to `heated`, both with one
 * time constant, and its heating holds a setting exactly. Other temperatures stay where they are.
 */
export interface MadeRoom {
  readonly outdoors: number;
  readonly heated: number;
  readonly timeConstant: number;
  readonly begin: number;
}

const STILL: MadeRoom = { outdoors: 15, heated: 15, timeConstant: 1, begin: 15 };

export function underThermostat(
  more: Partial<Thermostat>,
  household: Household,
  {
    days = 1,
    dt = 600,
    start = MONDAY,
    room = STILL,
    windowOpen = (_step: number): boolean => false,
    asked = Number.NaN,
    automation = {} as Partial<Automation>,
  } = {},
): Watched {
  const all: Automation = {
    ...noAutomation(2),
    thermostats: [PLAIN_THERMOSTAT, { ...PLAIN_THERMOSTAT, ...more }],
    ...automation,
  };
  const presence = createPresence(HOME, all, dt);
  const thermostats = createThermostats(HOME, household, all, dt);
  const observed = createObservation(2, 0, 0);
  const commands = createCommands({ ...HOME, devices: [] });
  const since = new Float64Array(2).fill(Number.POSITIVE_INFINITY);
  observed.felt.fill(room.begin);
  const watched: Watched = { setpoints: [], bands: [], temperatures: [], outputs: [] };
  laidOut(household, days, { start, dt }).forEach((day, k) => {
    presence.beginDay(start + k * DAY);
    thermostats.beginDay(start + k * DAY, day.steps);
    for (let s = 0; s < day.steps; s++) {
      const now = start + k * DAY + s * dt;
      const open = windowOpen(k * day.steps + s);
      since[LIVING] = open ? Math.min(since[LIVING]!, now) : Number.POSITIVE_INFINITY;
      thermostats.asked[LIVING] = asked;
      presence.step(day, s);
      followSchedules(commands, day, s);
      thermostats.step(s, observed, presence, since, commands);
      const setpoint = commands.setpoints[LIVING]!;
      watched.setpoints.push(setpoint);
      watched.bands.push(commands.band[LIVING]!);
      watched.temperatures.push(observed.felt[LIVING]!);
      watched.outputs.push(warm(observed.felt, observed.output, room, setpoint, dt));
    }
  });
  return watched;
}

function warm(
  temperature: Float64Array,
  output: Float64Array,
  { outdoors, heated, timeConstant }: MadeRoom,
  setpoint: number,
  dt: number,
): number {
  const kept = Math.exp(-dt / timeConstant);
  const free = outdoors + (temperature[LIVING]! - outdoors) * kept;
  const full = heated + (temperature[LIVING]! - heated) * kept;
  const end = Math.max(free, Math.min(full, setpoint));
  temperature[LIVING] = end;
  output[LIVING] = full > free ? (end - free) / (full - free) : 0;
  return output[LIVING]!;
}
