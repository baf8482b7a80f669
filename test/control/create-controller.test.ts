import { expect, test } from 'vitest';
import {
  type AiringHabit,
  OPEN_GATE,
  PLAIN_THERMOSTAT,
  type Rule,
  type RuleAction,
} from '../../src/control/automation.ts';
import type { Observation } from '../../src/control/observations.ts';
import { AHEAD, SPRING } from '../units/summer-time.ts';
import {
  ALERT,
  condition,
  control,
  DAY,
  EVERY_DAY,
  range,
  rehearse,
  rule,
  someone,
  stepsWhere,
} from './rehearse.ts';

const ALWAYS_IN = { people: [someone([0, 1440])] };
const HEATED = [
  { base: 20, spells: [{ days: EVERY_DAY, from: 60, to: 120, value: 16 }] },
  { base: 18, spells: [] },
];
/** Opened at step 30 for half an hour. */
const AIRING: AiringHabit = {
  name: 'air the den',
  openings: [0],
  openShare: 1,
  after: { by: 'readings', all: [condition('co2', 'above', 1000)] },
  lasts: 1800,
  until: [],
  probability: 1,
  delay: 0,
  drierBy: null,
  notBelow: Number.NEGATIVE_INFINITY,
};
const stuffyAt30 = (observed: Observation, step: number): void => {
  observed.species[0]![0] = step === 30 ? 1200 : 500;
};
const column = (rows: readonly number[][], k: number): number[] => rows.map((row) => row[k]!);

test('without automation programme and clock hold, and nothing runs', () => {
  const line = { base: 0, spells: [{ days: EVERY_DAY, from: 420, to: 430, value: 0.3 }] };
  const household = { ...ALWAYS_IN, setpoints: HEATED, openings: [line, line] };
  const { setpoints, openings, devices, report } = rehearse({ household });
  const programme = range(0, 144).map((step) => (step >= 6 && step < 12 ? 16 : 20));
  expect(column(setpoints, 0)).toEqual(programme);
  expect(stepsWhere(openings)).toEqual([42]);
  expect(stepsWhere(devices)).toEqual([]);
  expect(report).toEqual({ rules: [], airings: [], devices: [] });
});

test('heating is locked out, and a gated device stopped, in the step in which a window is opened', () => {
  const locking = { ...PLAIN_THERMOSTAT, windowDelay: 0 };
  const { setpoints, devices } = rehearse({
    see: stuffyAt30,
    household: { ...ALWAYS_IN, setpoints: HEATED },
    automation: {
      airings: [AIRING],
      thermostats: [locking, locking],
      deviceControls: [control({ gate: { ...OPEN_GATE, windowsShut: true } })],
    },
  });
  const off = column(setpoints, 0).flatMap((t, step) => (t === -Infinity ? [step] : []));
  expect(off).toEqual([30, 31, 32]);
  expect(new Set(column(setpoints, 1))).toEqual(new Set([18]));
  expect(column(devices, 0).flatMap((x, step) => (x === 0 ? [step] : []))).toEqual([30, 31, 32]);
});

test('too cold with the windows open must not heat: a rule asks in vain while they are', () => {
  const locking = { ...PLAIN_THERMOSTAT, windowDelay: 0 };
  const warmer: RuleAction = { do: 'setpoint', room: 0, setpoint: 23 };
  const { setpoints } = rehearse({
    see: (observed, step) => {
      stuffyAt30(observed, step);
      observed.temperature[0] = step >= 28 && step < 40 ? 17 : 20;
    },
    household: { ...ALWAYS_IN, setpoints: HEATED },
    automation: {
      airings: [AIRING],
      thermostats: [locking, locking],
      rules: [rule({ all: [condition('temperature', 'below', 18)], actions: [warmer] })],
    },
  });
  const off = -Infinity;
  expect(column(setpoints, 0).slice(26, 42)).toEqual(
    [20, 20, 23, 23, off, off, off].concat(Array(7).fill(23), 20, 20),
  );
});

test('a rule on windows sees what somebody opened from the step after on, for as long as it was open', () => {
  const window = condition('window', 'above', 0.5);
  const stops: RuleAction = { do: 'device', device: 0, on: false };
  const { devices, openTimes } = rehearse({
    see: stuffyAt30,
    household: ALWAYS_IN,
    automation: {
      airings: [AIRING],
      rules: [rule({ all: [window], actions: [stops] })],
      deviceControls: [control()],
    },
  });
  expect(stepsWhere(openTimes)).toEqual([30, 31, 32]);
  expect(column(devices, 0).flatMap((x, step) => (x === 0 ? [step] : []))).toEqual([31, 32, 33]);
});

test('presence in a rule is what the sensor says, not who is there', () => {
  const runs: RuleAction = { do: 'device', device: 0, on: true };
  const rules = [rule({ all: [condition('presence', 'above', 0.5)], actions: [runs] })];
  const deviceControls = [control({ by: { kind: 'rule' } })];
  const household = { people: [someone([120, 240])] };
  const through = (sensor: typeof ALERT | null) =>
    stepsWhere(
      rehearse({
        household,
        automation: { rules, deviceControls, presenceSensors: [sensor, null] },
      }).devices,
    );
  expect(through(ALERT)).toEqual(range(12, 24));
  expect(through({ ...ALERT, delay: 1200, holdOn: 1800 })).toEqual(range(14, 27));
  expect(through(null)).toEqual([]);
});

test('the hour of a rule is local: it ends at midnight and moves with daylight saving', () => {
  const runs: RuleAction = { do: 'device', device: 0, on: true };
  const late = condition('hour', 'above', 22, { room: -1 });
  const early = condition('hour', 'below', 7, { room: -1 });
  const run = (one: Rule, more: object = {}) => {
    const deviceControls = [control({ by: { kind: 'rule' } })];
    return stepsWhere(rehearse({ ...more, automation: { rules: [one], deviceControls } }).devices);
  };
  expect(run(rule({ all: [late], actions: [runs] }))).toEqual(range(132, 144));
  expect(run(rule({ all: [early], actions: [runs] }))).toEqual(range(0, 42));
  const night = [
    condition('hour since noon', 'above', 10, { room: -1 }),
    condition('hour since noon', 'below', 19, { room: -1 }),
  ];
  expect(run(rule({ all: night, actions: [runs] }))).toEqual([...range(0, 42), ...range(132, 144)]);
  const script = { household: { clock: AHEAD }, start: Math.floor(SPRING / DAY) * DAY };
  expect(run(rule({ all: [late], actions: [runs] }), script)).toEqual(range(120, 132));
  expect(run(rule({ all: [early], actions: [runs] }), script)).toEqual([
    ...range(0, 30),
    ...range(132, 144),
  ]);
});

test('the same seed gives the same days, whatever is left to luck', () => {
  const noisy = { bias: 0, noise: 2, step: 1, lag: 1200, every: 1200 };
  const damp = condition('relative humidity', 'above', 51, { sensor: noisy });
  const opens: RuleAction = {
    ...{ do: 'window', openings: [1], openShare: 1, lasts: 600 },
    ...{ probability: 0.5, delay: 600 },
  };
  const airings = [
    { ...AIRING, after: { by: 'readings', all: [damp] } as const, probability: 0.5 },
  ];
  const rules = [rule({ all: [{ ...damp, value: 52 }], actions: [opens] })];
  const deviceControls = [control({ by: { kind: 'reading', on: damp } })];
  const presenceSensors = [{ ...ALERT, missesAwake: 0.3 }, null];
  const run = (seed: number) =>
    rehearse({
      days: 5,
      household: ALWAYS_IN,
      automation: { seed, airings, rules, deviceControls, presenceSensors },
    });
  const first = run(1);
  expect(run(1)).toEqual(first);
  for (const what of ['devices', 'openTimes', 'report'] as const) {
    expect(run(2)[what]).not.toEqual(first[what]);
  }
  expect(first.report.airings[0]!.opened).toBeGreaterThan(0);
  expect(first.report.rules[0]!.actedOn).toBeGreaterThan(0);
});
