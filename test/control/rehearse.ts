import {
  type Automation,
  type Condition,
  type DeviceControl,
  OPEN_GATE,
  PERFECT_SENSOR,
  type PresenceSensor,
  type Quantity,
  type Rule,
} from '../../src/control/automation.ts';
import type { ControlReport } from '../../src/control/control-report.ts';
import { createController } from '../../src/control/create-controller.ts';
import { createDayInputs } from '../../src/control/day-inputs.ts';
import { fillDayInputs } from '../../src/control/fill-day-inputs.ts';
import type { Household, Person } from '../../src/control/household.ts';
import {
  createCommands,
  createObservation,
  followSchedules,
  type Observation,
} from '../../src/control/observations.ts';
import type { Device } from '../../src/home/devices.ts';
import type { Home, Opening } from '../../src/home/home.ts';
import { always, bareHome, bareRoom, quietHousehold } from '../engine/homes.ts';
import { noAutomation } from './no-automation.ts';

/** Two rooms with a window each, two devices and three species; all invented. */
export const HOME: Home = bareHome([bareRoom('den', 30), bareRoom('bath', 10)], {
  openings: [opening('den window', 0), opening('bath window', 1)],
  devices: [device('dryer', 0), device('fan', 1)],
  species: [
    { name: 'co2', unit: 'ppm', outdoor: 420, penetration: 1 },
    { name: 'pm25', unit: 'µg/m3', outdoor: 8, penetration: 0.8 },
  ],
});

/** What a rehearsed stretch came to: per step, and the report at its end. */
export interface Rehearsal {
  /** Share of each device. [step][device] */
  readonly devices: number[][];
  readonly emptied: number[][];
  readonly openings: number[][];
  readonly openTimes: number[][];
  readonly setpoints: number[][];
  readonly report: ControlReport;
}

export interface Script {
  readonly automation?: Partial<Automation>;
  readonly household?: Partial<Household>;
  readonly dt?: number;
  readonly days?: number;
  /** Instant of the first step. [s UTC] */
  readonly start?: number;
  /** Sets what is to be seen at each step; what it leaves alone stays as it was. */
  readonly see?: (observed: Observation, step: number) => void;
  /** Counting starts with this step. */
  readonly countFrom?: number;
}

/** Let a controller act through some days with made-up rooms. */
export function rehearse(script: Script): Rehearsal {
  const { dt = 600, days = 1, start = MONDAY, see, countFrom = 0 } = script;
  const household = quietHousehold(HOME, script.household ?? {});
  const automation = { ...noAutomation(HOME.rooms.length), ...script.automation };
  const controller = createController(HOME, household, automation, dt);
  const steps = DAY / dt;
  const day = createDayInputs(household, 2, 2, steps);
  const observed = mildRooms();
  const commands = createCommands(HOME);
  const out = { devices: [], emptied: [], openings: [], openTimes: [], setpoints: [] } as {
    [K in Exclude<keyof Rehearsal, 'report'>]: number[][];
  };
  for (let d = 0; d < days; d++) {
    fillDayInputs(day, household, start + d * DAY, dt, steps);
    controller.beginDay(start + d * DAY, steps);
    for (let s = 0; s < steps; s++) {
      const step = d * steps + s;
      if (step === countFrom) controller.startCounting();
      see?.(observed, step);
      followSchedules(commands, day, s);
      controller.act(day, s, observed, commands);
      out.devices.push([...commands.devices]);
      out.emptied.push([...commands.empty]);
      out.openings.push([...commands.openings]);
      out.openTimes.push([...commands.openTimes]);
      out.setpoints.push([...commands.setpoints]);
    }
  }
  return { ...out, report: controller.report() };
}

/** 20 °C, 50 % indoors; 5 °C, 80 % outdoors, 3.25 g/m3 drier; fresh air. */
function mildRooms(): Observation {
  const observed = createObservation(2, 2, 2);
  observed.temperature.fill(20);
  observed.felt.fill(20);
  observed.relativeHumidity.fill(50);
  observed.absoluteHumidity.fill(8.625);
  observed.species[0]!.fill(420);
  observed.species[1]!.fill(8);
  observed.outdoor.set([5, 80, 5.375]);
  observed.outdoorSpecies.set([420, 8]);
  return observed;
}

export function condition(
  quantity: Quantity,
  is: Condition['is'],
  value: number,
  more: Partial<Condition> = {},
): Condition {
  return { quantity, room: 0, is, value, clear: value, sensor: PERFECT_SENSOR, ...more };
}

export function rule(more: Partial<Rule> = {}): Rule {
  const tell = { do: 'tell', what: 'look' } as const;
  return { name: 'rule', all: [], onDelay: 0, gate: OPEN_GATE, actions: [tell], ...more };
}

/** A device control that minds nothing. */
export function control(more: Partial<DeviceControl> = {}): DeviceControl {
  return {
    device: 0,
    by: { kind: 'always' },
    gate: OPEN_GATE,
    permitted: always(1),
    leastRun: 0,
    leastRest: 0,
    drierBy: null,
    mostRun: Number.POSITIVE_INFINITY,
    emptiedByPeople: true,
    ...more,
  };
}

/** Somebody in the den in these minutes of every day, awake or asleep. */
export function someone(
  ...stays: readonly (readonly [from: number, to: number, asleep?: 'asleep'])[]
): Person {
  const body = { sensible: 75, vapour: 1e-5, species: [5, 0] };
  return {
    name: 'someone',
    schedule: stays.map(([from, to, asleep]) => ({
      days: EVERY_DAY,
      from,
      to,
      room: 0,
      asleep: asleep === 'asleep',
    })),
    awake: body,
    asleep: body,
  };
}

/** Numbers of the steps for which something is so. */
export function stepsWhere(rows: readonly (readonly number[])[], column = 0): number[] {
  return rows.flatMap((row, step) => (row[column]! > 0 ? [step] : []));
}

/** The steps from one to another, the last not included. */
export function range(from: number, to: number): number[] {
  return Array.from({ length: to - from }, (_, k) => from + k);
}

function opening(name: string, room: number): Opening {
  return { name, room, area: 0.5, height: 1, azimuth: 180 };
}

function device(name: string, room: number): Device {
  return { name, room, does: { kind: 'heater', power: 500, radiantShare: 0 } };
}

export const EVERY_DAY = 0b1111111;
export const ALERT: PresenceSensor = { holdOn: 0, delay: 0, missesAwake: 0, missesAsleep: 0 };
/** Midnight UTC. [s] */
export const MONDAY = Date.UTC(2023, 0, 2) / 1000;
export const DAY = 86_400;
