import { expect, test } from 'vitest';
import type { AiringHabit } from '../../../src/control/automation.ts';
import type { Activity } from '../../../src/control/household.ts';
import type { Observation } from '../../../src/control/observations.ts';
import { AHEAD, SPRING } from '../../units/summer-time.ts';
import {
  condition,
  EVERY_DAY,
  range,
  rehearse,
  type Script,
  someone,
  stepsWhere,
} from '../rehearse.ts';

const STUFFY = condition('co2', 'above', 1000, { clear: 800 });
const ALWAYS_IN = { people: [someone([0, 1440])] };

function habit(more: Partial<AiringHabit> = {}): AiringHabit {
  return {
    name: 'air the den',
    openings: [0],
    openShare: 1,
    after: { by: 'readings', all: [STUFFY] },
    lasts: 600,
    until: [],
    probability: 1,
    delay: 0,
    drierBy: null,
    notBelow: Number.NEGATIVE_INFINITY,
    ...more,
  };
}

const shower = (from: number, to: number, more: Partial<Activity> = {}): Activity => ({
  name: 'shower',
  room: 1,
  when: [{ days: EVERY_DAY, from, to }],
  heat: 0,
  electricity: 0,
  vapour: 0,
  drying: 0,
  species: [0, 0],
  ...more,
});

const stuffyIn = (...steps: readonly number[]) => {
  const when = new Set(steps);
  return (observed: Observation, step: number): void => {
    observed.species[0]![0] = when.has(step) ? 1200 : 500;
  };
};

function air(one: Partial<AiringHabit>, script: Script = {}) {
  const automation = { ...script.automation, airings: [habit(one)] };
  const { openTimes, report } = rehearse({ household: ALWAYS_IN, ...script, automation });
  return { open: stepsWhere(openTimes), ...report.airings[0]! };
}

test('a reading that asks is answered once, with the window open for its time', () => {
  const see = stuffyIn(30, 31, 32, 80);
  expect(air({}, { see })).toEqual({
    name: 'air the den',
    occasions: 2,
    opened: 2,
    open: [30, 80],
  });
  expect(air({ lasts: 1200, delay: 840 }, { see }).open).toEqual([31, 32, 81, 82]);
});

test('a reading that goes on asking is answered again after an hour', () => {
  const { open, occasions } = air({}, { see: stuffyIn(...range(30, 40)) });
  expect(open).toEqual([30, 36]);
  expect(occasions).toBe(2);
});

test('a habit put before another leaves what people make of that as it is', () => {
  const see = stuffyIn(...range(0, 48).map((k) => 3 * k));
  const own = habit({ name: 'own', probability: 0.5 });
  const before = habit({ name: 'before', probability: 0.5, notBelow: 90 });
  const open = (...airings: readonly AiringHabit[]) =>
    stepsWhere(rehearse({ household: ALWAYS_IN, see, automation: { airings } }).openTimes);
  expect(open(own).length).toBeGreaterThan(10);
  expect(open(before, own)).toEqual(open(own));
});

test('with probability 0 it comes up and nobody does it', () => {
  const { open, occasions, opened } = air({ probability: 0 }, { see: stuffyIn(30, 80) });
  expect({ open, occasions, opened }).toEqual({ open: [], occasions: 2, opened: 0 });
});

test('with a probability between, some do, and the same ones for the same seed', () => {
  const see = (observed: Observation, step: number): void => {
    observed.species[0]![0] = step % 2 === 0 ? 1200 : 500;
  };
  const run = (seed: number) => air({ probability: 0.4 }, { days: 10, see, automation: { seed } });
  const { occasions, opened } = run(5);
  expect(occasions).toBe(720);
  // Four standard deviations of the binomial.
  expect(Math.abs(opened - 288)).toBeLessThan(4 * Math.sqrt(720 * 0.4 * 0.6));
  expect(run(5)).toEqual(run(5));
  expect(run(6).open).not.toEqual(run(5).open);
});

test('readings wait for somebody who is home and awake', () => {
  const household = { people: [someone([0, 420, 'asleep'], [420, 480], [900, 960])] };
  const script = { household, see: stuffyIn(...range(30, 44), ...range(60, 92)) };
  expect(air({}, script)).toMatchObject({ open: [42, 90], occasions: 2, opened: 2 });
});

test('whoever has left before the delay is over opens nothing', () => {
  const household = { people: [someone([420, 480])] };
  const { open, occasions } = air({ delay: 1800 }, { household, see: stuffyIn(46) });
  expect({ open, occasions }).toEqual({ open: [], occasions: 1 });
});

test('shut as soon as the other readings hold', () => {
  const until = [condition('co2', 'below', 700)];
  const see = (observed: Observation, step: number): void => {
    observed.species[0]![0] = step < 30 ? 750 : 1200 - 100 * (step - 30);
  };
  expect(air({ lasts: 7200, until }, { see }).open).toEqual(range(30, 36));
  expect(air({ lasts: 1200, until }, { see }).open).toEqual([30, 31]);
});

test('after an activity: when it has ended, so much later, if somebody is there to do it', () => {
  const after = { by: 'activity', activity: 0, later: 0 } as const;
  const script = { household: { ...ALWAYS_IN, activities: [shower(420, 437)] } };
  expect(air({ after }, script).open).toEqual([44]);
  expect(air({ after: { ...after, later: 900 } }, script).open).toEqual([45]);
  const gone = { ...script.household, people: [someone([420, 445])] };
  expect(air({ after }, { household: gone })).toMatchObject({ open: [44], opened: 1 });
  const goneSooner = { ...gone, people: [someone([420, 430])] };
  const lapsed = air({ after }, { household: goneSooner });
  expect(lapsed).toMatchObject({ open: [], occasions: 1, opened: 0 });
});

test('an activity that ends at midnight is followed by airing in the new day', () => {
  const after = { by: 'activity', activity: 0, later: 0 } as const;
  const household = { ...ALWAYS_IN, activities: [shower(1410, 1440)] };
  expect(air({ after }, { household, days: 2 }).open).toEqual([144]);
});

test('an activity that does not happen in an empty home calls for no airing', () => {
  const after = { by: 'activity', activity: 0, later: 0 } as const;
  const household = {
    people: [someone([480, 600])],
    activities: [shower(420, 435, { stopsFor: 'an empty home' })],
  };
  expect(air({ after }, { household })).toMatchObject({ open: [], occasions: 0 });
});

test('on waking: when the first of the sleepers is up, once a night', () => {
  const after = { by: 'waking', room: 0 } as const;
  const early = someone([0, 420, 'asleep'], [420, 600], [1380, 1440, 'asleep']);
  const late = someone([0, 545, 'asleep'], [545, 600]);
  const household = { people: [early, late] };
  expect(air({ after }, { household, days: 2 })).toMatchObject({ open: [42, 186], occasions: 2 });
  expect(air({ after }, { household: { people: [late] } }).open).toEqual([55]);
});

test('waking follows the wall clock through the night that daylight saving shortens', () => {
  const after = { by: 'waking', room: 0 } as const;
  const household = { people: [someone([0, 420, 'asleep'], [420, 600])], clock: AHEAD };
  const start = Math.floor(SPRING / 86_400) * 86_400 - 86_400;
  const { open } = air({ after }, { household, start, days: 2 });
  expect(open).toEqual([36, 144 + 30]);
});

test('only if outdoor air is drier by the gap, and outdoors is not too cold', () => {
  const see = stuffyIn(30, 80);
  expect(air({ drierBy: 3.25 }, { see }).open).toEqual([30, 80]);
  expect(air({ drierBy: 3.26 }, { see })).toMatchObject({ open: [], occasions: 2, opened: 0 });
  expect(air({ notBelow: 5 }, { see }).open).toEqual([30, 80]);
  expect(air({ notBelow: 5.1 }, { see }).open).toEqual([]);
});

test('each window is judged by the air of its own room', () => {
  const see = (observed: Observation, step: number): void => {
    stuffyIn(30)(observed, step);
    observed.absoluteHumidity.set([5, 14]);
  };
  const airings = [habit({ openings: [0, 1], drierBy: 1 })];
  const { openTimes } = rehearse({ household: ALWAYS_IN, see, automation: { airings } });
  expect(stepsWhere(openTimes, 0)).toEqual([]);
  expect(stepsWhere(openTimes, 1)).toEqual([30]);
});

test('in a long step a short airing opens the window by its share', () => {
  const airings = [habit({ openShare: 0.6 })];
  const see = stuffyIn(7);
  const script = { dt: 3600, household: ALWAYS_IN, see, automation: { airings } };
  const { openings, openTimes } = rehearse(script);
  expect(openTimes[7]![0]).toBeCloseTo(1 / 6, 12);
  expect(openings[7]![0]).toBeCloseTo(0.1, 12);
});

test('a window open by the clock stays as open as it was', () => {
  const line = { base: 0, spells: [{ days: EVERY_DAY, from: 300, to: 320, value: 0.4 }] };
  const household = { ...ALWAYS_IN, openings: [line, { base: 0, spells: [] }] };
  const run = (wide: number) =>
    rehearse({
      household,
      see: stuffyIn(31),
      automation: { airings: [habit({ openShare: wide })] },
    }).openings;
  expect(
    run(0.1)
      .slice(29, 33)
      .map(([den]) => den),
  ).toEqual([0, 0.4, 0.4, 0]);
  expect(
    run(1)
      .slice(29, 33)
      .map(([den]) => den),
  ).toEqual([0, 0.4, 1, 0]);
});

test('what one habit holds open does not keep another from its own window', () => {
  const damp = condition('relative humidity', 'above', 60, { room: 1 });
  const bath = habit({ openings: [1], after: { by: 'readings', all: [damp] } });
  const see = (observed: Observation, step: number): void => {
    stuffyIn(30)(observed, step);
    observed.relativeHumidity[1] = step === 32 ? 70 : 50;
  };
  const airings = [habit({ lasts: 3600 }), bath];
  const { openTimes, report } = rehearse({ household: ALWAYS_IN, see, automation: { airings } });
  expect(stepsWhere(openTimes, 0)).toEqual(range(30, 36));
  expect(stepsWhere(openTimes, 1)).toEqual([32]);
  expect(report.airings.map(({ opened }) => opened)).toEqual([1, 1]);
});

test('a second shower is aired after as well while the window still stands open', () => {
  const after = { by: 'activity', activity: 0, later: 0 } as const;
  const times = [
    { days: EVERY_DAY, from: 420, to: 440 },
    { days: EVERY_DAY, from: 450, to: 470 },
  ];
  const household = { ...ALWAYS_IN, activities: [shower(0, 0, { when: times })] };
  expect(air({ after, lasts: 3600 }, { household })).toMatchObject({
    occasions: 2,
    open: range(44, 53),
  });
});

test('a reading that goes on asking is not answered again while the window stands open', () => {
  const see = stuffyIn(...range(30, 42));
  expect(air({ lasts: 7200 }, { see })).toMatchObject({ occasions: 1, open: range(30, 42) });
  const longer = stuffyIn(...range(30, 43));
  expect(air({ lasts: 7200 }, { see: longer }).open).toEqual(range(30, 54));
});

test('who does not look at the humidity airs into damper air as well', () => {
  const see = (observed: Observation, step: number): void => {
    stuffyIn(30)(observed, step);
    observed.absoluteHumidity.set([4, 4]); // 5.375 outdoors
  };
  expect(air({}, { see }).open).toEqual([30]);
  expect(air({ drierBy: 0 }, { see }).open).toEqual([]);
});

test('of two who hold a window open, the wider and the longer counts; afterwards neither does', () => {
  const damp = condition('relative humidity', 'above', 60);
  const narrow = habit({ openShare: 0.3, lasts: 3600, after: { by: 'readings', all: [damp] } });
  const see = (observed: Observation, step: number): void => {
    stuffyIn(32)(observed, step);
    observed.relativeHumidity[0] = step === 30 || step === 60 ? 70 : 50;
  };
  const airings = [narrow, habit({})];
  const { openings } = rehearse({ household: ALWAYS_IN, see, automation: { airings } });
  const den = openings.map(([share]) => share);
  expect(den.slice(29, 37)).toEqual([0, 0.3, 0.3, 1, 1, 1, 1, 0]);
  expect(den.slice(59, 67)).toEqual([0, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0]);
});

test('the sleepers of any room may be those who air on waking', () => {
  const stays = [{ days: EVERY_DAY, from: 0, to: 420, room: 1, asleep: true }];
  const sleeper = { ...someone(), schedule: [...stays, ...someone([420, 480]).schedule] };
  const after = { by: 'waking', room: 1 } as const;
  expect(air({ after }, { household: { people: [sleeper] } }).open).toEqual([42]);
});
