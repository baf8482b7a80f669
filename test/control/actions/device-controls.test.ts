import { expect, test } from 'vitest';
import type { DeviceControl, Gate, RuleAction } from '../../../src/control/automation.ts';
import type { Activity, Spell } from '../../../src/control/household.ts';
import type { Observation } from '../../../src/control/observations.ts';
import { always } from '../../engine/homes.ts';
import { AHEAD, AUTUMN, SPRING } from '../../units/summer-time.ts';
import {
  ALERT,
  condition,
  control,
  DAY,
  EVERY_DAY,
  range,
  rehearse,
  rule,
  type Script,
  someone,
  stepsWhere,
} from '../rehearse.ts';

const DAMP = condition('relative humidity', 'above', 60);
const BY_DAMP = { kind: 'reading', on: DAMP } as const;
const PRESENT: Gate = { present: 'in the room', windowsShut: false };
const dampIn = (...steps: readonly number[]) => {
  const when = new Set(steps);
  return (observed: Observation, step: number): void => {
    observed.relativeHumidity[0] = when.has(step) ? 65 : 50;
  };
};
const day = (from: number, to: number, more: Partial<Spell> = {}) => ({
  base: 0,
  spells: [{ days: EVERY_DAY, from, to, value: 1, ...more }],
});

function run(one: Partial<DeviceControl>, script: Script = {}) {
  const automation = { ...script.automation, deviceControls: [control(one)] };
  const { devices, emptied, report } = rehearse({ ...script, automation });
  const steps = stepsWhere(devices);
  return { steps, devices, emptiedAt: stepsWhere(emptied), ...report.devices[0]! };
}

test('always is always; a device without a control stands still', () => {
  const { steps, devices, starts } = run({});
  expect(steps).toEqual(range(0, 144));
  expect(stepsWhere(devices, 1)).toEqual([]);
  expect(starts).toBe(1);
});

test('by the clock it runs at the share of its line, also of part of a step', () => {
  const line = day(60, 75, { value: 0.5 } as object);
  const { steps, devices, starts } = run({ by: { kind: 'clock', schedule: line } });
  expect(steps).toEqual([6, 7]);
  expect([devices[6]![0], devices[7]![0]]).toEqual([0.5, 0.25]);
  expect(starts).toBe(1);
});

test('a clock runs on over midnight without a new start, and follows daylight saving', () => {
  const line = day(1380, 1500);
  expect(run({ by: { kind: 'clock', schedule: line } }, { days: 2 })).toMatchObject({
    steps: [...range(0, 6), ...range(138, 150), ...range(282, 288)],
    starts: 3,
  });
  const morning = { by: { kind: 'clock', schedule: day(420, 430) } } as const;
  const around = (jump: number): number[] => {
    const start = Math.floor(jump / DAY) * DAY - DAY;
    return run(morning, { household: { clock: AHEAD }, start, days: 2 }).steps;
  };
  expect(around(SPRING)).toEqual([36, 144 + 30]);
  expect(around(AUTUMN)).toEqual([30, 144 + 36]);
});

test('by a reading it runs between its levels', () => {
  const levels = [61, 58, 55, 54, 59, 60, 62, 50];
  const see = (observed: Observation, step: number): void => {
    observed.relativeHumidity[0] = levels[step] ?? 50;
  };
  const by = { kind: 'reading', on: { ...DAMP, clear: 55 } } as const;
  expect(run({ by }, { see })).toMatchObject({ steps: [0, 1, 6], starts: 2 });
});

test('with an activity it runs on to the second, into the next day too', () => {
  const shower = (from: number, to: number): Activity => ({
    ...{ name: 'shower', room: 1, when: [{ days: EVERY_DAY, from, to }], heat: 0 },
    ...{ electricity: 0, vapour: 0, drying: 0, species: [0, 0] },
  });
  const by = { kind: 'activity', activities: [0], runOn: 900 } as const;
  const { steps, devices } = run({ by }, { household: { activities: [shower(420, 430)] } });
  expect(steps).toEqual([42, 43, 44]);
  expect(devices.slice(42, 45).map(([share]) => share)).toEqual([1, 1, 0.5]);
  const late = run({ by }, { household: { activities: [shower(1425, 1440)] }, days: 2 });
  expect(late.steps).toEqual([0, 1, 142, 143, 144, 145, 286, 287]);
  expect(late.devices[145]![0]).toBe(0.5);
  const empty = { ...shower(420, 430), stopsFor: 'an empty home' } as const;
  expect(run({ by }, { household: { activities: [empty] } }).steps).toEqual([]);
  // The run-on goes on though everybody has left.
  const household = { activities: [empty], people: [someone([400, 430])] };
  expect(run({ by }, { household }).steps).toEqual([42, 43, 44]);
});

test('a gate that never opens is as good as no device', () => {
  const see = dampIn(...range(10, 40));
  const shut = run({ by: BY_DAMP, gate: PRESENT }, { see });
  const none = rehearse({ see });
  expect(shut.devices).toEqual(none.devices);
  expect(shut.starts).toBe(0);
});

test('a gate that is always open is as good as none', () => {
  const script: Script = {
    see: dampIn(...range(10, 40)),
    household: { people: [someone([0, 1440])] },
    automation: { presenceSensors: [ALERT, null] },
  };
  expect(run({ by: BY_DAMP, gate: PRESENT }, script)).toEqual(run({ by: BY_DAMP }, script));
});

test('it runs only while somebody is there, or in the home, or the windows are shut', () => {
  const script: Script = {
    household: { people: [someone([60, 120])], openings: [day(80, 100), always(1)] },
    automation: { presenceSensors: [ALERT, null] },
  };
  const through = (present: Gate['present'], windowsShut: boolean, device = 0): number[] => {
    const { devices } = run({ device, gate: { present, windowsShut } }, script);
    return stepsWhere(devices, device);
  };
  expect(through('in the room', false)).toEqual(range(6, 12));
  expect(through('at home', false, 1)).toEqual(range(6, 12));
  expect(through('in the room', true)).toEqual([6, 7, 10, 11]);
  expect(through('no matter', true)).toEqual([...range(0, 8), ...range(10, 144)]);
  expect(through('no matter', true, 1)).toEqual([]);
});

test('only in permitted hours, and only while outdoor air is drier by the gap', () => {
  const see = dampIn(...range(10, 40));
  expect(run({ by: BY_DAMP, permitted: day(150, 250) }, { see }).steps).toEqual(range(15, 25));
  const wetter = (observed: Observation, step: number): void => {
    observed.outdoor[2] = step < 20 ? 5.4 : 8;
  };
  expect(run({ drierBy: 3 }, { see: wetter }).steps).toEqual(range(0, 20));
  // Rooms hold 8.625 g/m3 and outdoors 5.375: a gap that is met exactly is enough.
  expect(run({ drierBy: 3.25 }).steps).toEqual(range(0, 144));
  expect(run({ drierBy: 3.26 }).steps).toEqual([]);
});

test('least run and least rest hold, whatever the reading does', () => {
  const see = dampIn(...range(0, 144).filter((step) => step % 2 === 0));
  const { devices, starts } = run({ by: BY_DAMP, leastRun: 1800, leastRest: 2400 }, { see });
  const line = devices.map(([share]) => (share! > 0 ? '#' : '.')).join('');
  const runs = line.split(/\.+/).filter((part) => part !== '');
  const rests = line.split(/#+/).filter((part) => part !== '');
  expect(runs.slice(0, -1).every((part) => part.length >= 3)).toBe(true);
  expect(rests.slice(0, -1).every((part) => part.length >= 4)).toBe(true);
  expect(starts).toBe(runs.length);
  expect(starts).toBeGreaterThan(10);
});

test('within its least run it follows another share, and keeps the last one where none is asked', () => {
  const schedule = {
    base: 0,
    spells: [
      { days: EVERY_DAY, from: 60, to: 70, value: 1 },
      { days: EVERY_DAY, from: 70, to: 80, value: 0.5 },
    ],
  };
  const shares = (leastRun: number): number[] =>
    run({ by: { kind: 'clock', schedule }, leastRun })
      .devices.slice(5, 11)
      .map(([share]) => share!);
  expect(shares(0)).toEqual([0, 1, 0.5, 0, 0, 0]);
  expect(shares(2400)).toEqual([0, 1, 0.5, 0.5, 0.5, 0]);
});

test('without least times it follows the reading step by step', () => {
  const steps = range(0, 144).filter((step) => step % 2 === 0);
  expect(run({ by: BY_DAMP }, { see: dampIn(...steps) })).toMatchObject({ steps, starts: 72 });
});

test('after its longest run it rests, a step at the least', () => {
  const line = (leastRest: number): string =>
    run({ mostRun: 1800, leastRest })
      .devices.slice(0, 9)
      .map(([share]) => (share! > 0 ? '#' : '.'))
      .join('');
  expect(line(0)).toBe('###.###.#');
  expect(line(1200)).toBe('###..###.');
});

test('a rule runs it and stops it, and stop wins', () => {
  const act = (on: boolean): RuleAction => ({ do: 'device', device: 0, on });
  const hot = condition('temperature', 'above', 25);
  const see = (observed: Observation, step: number): void => {
    dampIn(...range(10, 20))(observed, step);
    observed.temperature[0] = step >= 15 && step < 30 ? 26 : 20;
  };
  const with_ = (
    by: DeviceControl['by'],
    ...rules: readonly (readonly [typeof hot, boolean])[]
  ) => {
    const made = rules.map(([when, on]) => rule({ all: [when], actions: [act(on)] }));
    return run({ by }, { see, automation: { rules: made } }).steps;
  };
  expect(with_({ kind: 'rule' })).toEqual([]);
  expect(with_({ kind: 'rule' }, [hot, true])).toEqual(range(15, 30));
  expect(with_({ kind: 'always' }, [hot, false])).toEqual([...range(0, 15), ...range(30, 144)]);
  expect(with_(BY_DAMP, [hot, true])).toEqual(range(10, 30));
  expect(with_({ kind: 'rule' }, [DAMP, false], [hot, true])).toEqual(range(20, 30));
});

test('a full tank stops it until somebody home and awake empties it', () => {
  const see = (observed: Observation, step: number): void => {
    observed.full[0] = step >= 10 && step < 48 ? 1 : 0;
  };
  // Least times do not keep a full one running.
  const asleep = run(
    { leastRun: 36_000 },
    { see, household: { people: [someone([0, 420, 'asleep'])] } },
  );
  expect(asleep).toMatchObject({ emptied: 0, starts: 2 });
  expect(asleep.steps).toEqual([...range(0, 10), ...range(48, 144)]);
  // The made-up tank is full again at once.
  const up = run({}, { see, household: { people: [someone([0, 420, 'asleep'], [420, 430])] } });
  expect(up.emptiedAt).toEqual([42]);
  expect(up.steps).toEqual([...range(0, 10), 42, ...range(48, 144)]);
  expect(run({ emptiedByPeople: false }, { see }).steps).toEqual(range(0, 144));
});

test('two controls of one device run it for either, and empty its tank once', () => {
  const see = (observed: Observation, step: number): void => {
    observed.full[0] = step === 10 ? 1 : 0;
  };
  const clock = (from: number, to: number) =>
    control({ by: { kind: 'clock', schedule: day(from, to) } });
  const { devices, report } = rehearse({
    see,
    household: { people: [someone([0, 1440])] },
    automation: { deviceControls: [clock(60, 80), clock(70, 90)] },
  });
  expect(stepsWhere(devices)).toEqual([6, 7, 8]);
  expect(report.devices.reduce((sum, { emptied }) => sum + emptied, 0)).toBe(1);
});

test('starts and emptyings count from where counting starts', () => {
  const see = (observed: Observation, step: number): void => {
    observed.full[0] = step === 10 || step === 100 ? 1 : 0;
  };
  const household = { people: [someone([0, 1440])] };
  const by = { kind: 'clock', schedule: day(60, 120) } as const;
  const counted = run({ by }, { see, household, days: 2, countFrom: 50 });
  expect(counted).toMatchObject({ starts: 1, emptied: 1, emptiedAt: [10, 100] });
  expect(counted.device).toBe(0);
});
