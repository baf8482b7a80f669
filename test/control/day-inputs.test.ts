import { expect, test } from 'vitest';
import { createDayInputs } from '../../src/control/day-inputs.ts';
import { fillDayInputs } from '../../src/control/fill-day-inputs.ts';
import type { Household, Spell } from '../../src/control/household.ts';
import { always, bareHome, bareRoom, quietHousehold } from '../engine/homes.ts';
import { AHEAD } from '../units/summer-time.ts';

// Invented households; times are local.
const HOME = bareHome([bareRoom('a', 30), bareRoom('b', 30)]);
const EVERY_DAY = 0b1111111;
const MONDAY = Date.UTC(2023, 0, 2) / 1000;

function layOut(household: Household, start: number, dt = 3600) {
  const steps = 86_400 / dt;
  const day = createDayInputs(household, 2, 1, steps);
  fillDayInputs(day, household, start, dt, steps);
  return { day, steps };
}

function heater(when: readonly Spell[]): Household {
  const activity = { name: 'x', room: 1, when, heat: 100, electricity: 50, vapour: 0, drying: 0 };
  return quietHousehold(HOME, { activities: [{ ...activity, species: [2] }] });
}

const hoursWith = (values: Float64Array, room = 1): number[] =>
  Array.from({ length: values.length / 2 }, (_, s) => s).filter((s) => values[s * 2 + room] !== 0);

test('an activity fills exactly its hours, in its room', () => {
  const { day } = layOut(heater([{ days: EVERY_DAY, from: 420, to: 540 }]), MONDAY);
  expect(hoursWith(day.applianceHeat)).toEqual([7, 8]);
  expect(hoursWith(day.applianceHeat, 0)).toEqual([]);
  expect(day.applianceSpecies[7 * 2 + 1]).toBe(2);
  expect(day.electricity[7]).toBe(50);
});

test('gas is burnt by the activities that burn gas, beside those that do not', () => {
  const [first] = heater([{ days: EVERY_DAY, from: 420, to: 540 }]).activities;
  const activities = [{ ...first!, gas: 800 }, first!];
  const { day } = layOut(quietHousehold(HOME, { activities }), MONDAY);
  expect([...day.gas].slice(6, 10)).toEqual([0, 800, 800, 0]);
});

test('a part of a step counts for its share', () => {
  const { day } = layOut(heater([{ days: EVERY_DAY, from: 450, to: 460 }]), MONDAY);
  expect(day.applianceHeat[7 * 2 + 1]).toBeCloseTo(100 / 6, 9);
});

test('vapour and drying count for the share of a step, and of the time that somebody is in', () => {
  const body = { sensible: 75, vapour: 0, species: [0] };
  const household = (room: number): Household => ({
    ...quietHousehold(HOME, {
      activities: [
        {
          ...{ name: 'cooking', room: 1, when: [{ days: EVERY_DAY, from: 450, to: 480 }] },
          ...{ heat: 0, electricity: 0, vapour: 4e-5, drying: 2e-5, species: [0] },
          stopsFor: 'an empty home',
        },
      ],
      people: [
        {
          name: 'somebody',
          schedule: [{ days: EVERY_DAY, from: 420, to: 435, room, asleep: false }],
          awake: body,
          asleep: body,
        },
      ],
    }),
  });
  for (const room of [0, 1]) {
    const { day } = layOut(household(room), MONDAY);
    // Half of the hour, and somebody in the home for a quarter of it, within that half.
    expect(day.applianceVapour[7 * 2 + 1]).toBeCloseTo(4e-5 / 4, 12);
    expect(day.drying[7 * 2 + 1]).toBeCloseTo(2e-5 / 4, 12);
  }
});

test('a spell past midnight runs on into the next day', () => {
  const sunday = 0b1000000;
  const { day } = layOut(heater([{ days: sunday, from: 1380, to: 1500 }]), MONDAY);
  expect(hoursWith(day.applianceHeat)).toEqual([0]);
});

test('days and months keep a spell to themselves', () => {
  const tuesday = heater([{ days: 0b10, from: 0, to: 60 }]);
  expect(hoursWith(layOut(tuesday, MONDAY).day.applianceHeat)).toEqual([]);
  expect(hoursWith(layOut(tuesday, MONDAY + 86_400).day.applianceHeat)).toEqual([0]);
  const july = heater([{ days: EVERY_DAY, months: 1 << 6, from: 0, to: 60 }]);
  expect(hoursWith(layOut(july, MONDAY).day.applianceHeat)).toEqual([]);
  expect(hoursWith(layOut(july, Date.UTC(2023, 6, 3) / 1000).day.applianceHeat)).toEqual([0]);
});

test('local time shifts the hours, and daylight saving shifts them again', () => {
  const household = { ...heater([{ days: EVERY_DAY, from: 600, to: 660 }]), clock: AHEAD };
  expect(hoursWith(layOut(household, MONDAY).day.applianceHeat)).toEqual([9]);
  expect(hoursWith(layOut(household, Date.UTC(2023, 6, 3) / 1000).day.applianceHeat)).toEqual([8]);
});

test('a whole day of activity is 23 hours in spring and 25 in autumn', () => {
  const household = { ...heater([{ days: 0b1000000, from: 0, to: 1440 }]), clock: AHEAD };
  const hours = (noon: number): number => {
    let sum = 0;
    for (const start of [noon - 86_400 * 1.5, noon - 86_400 / 2, noon + 86_400 / 2]) {
      sum += hoursWith(layOut(household, start).day.applianceHeat).length;
    }
    return sum;
  };
  expect(hours(Date.UTC(2023, 2, 26, 12) / 1000)).toBe(23);
  expect(hours(Date.UTC(2023, 9, 29, 12) / 1000)).toBe(25);
});

test('where spells of a line overlap, the later in the list wins', () => {
  const setpoints = [
    always(20),
    {
      base: 20,
      spells: [
        { days: EVERY_DAY, from: 0, to: 1440, value: 15 },
        { days: EVERY_DAY, from: 360, to: 420, value: 22 },
      ],
    },
  ];
  const { day } = layOut(quietHousehold(HOME, { setpoints }), MONDAY);
  expect(day.setpoints[5 * 2 + 1]).toBe(15);
  expect(day.setpoints[6 * 2 + 1]).toBe(22);
  expect(day.setpoints[6 * 2]).toBe(20);
});

test('off is never averaged with a setting: what holds in the middle of the step counts', () => {
  const off = Number.NEGATIVE_INFINITY;
  const setpoints = [
    { base: 20, spells: [{ days: EVERY_DAY, from: 360, to: 380, value: off }] },
    { base: 20, spells: [{ days: EVERY_DAY, from: 360, to: 400, value: off }] },
  ];
  const { day } = layOut(quietHousehold(HOME, { setpoints }), MONDAY);
  expect(day.setpoints[6 * 2]).toBe(20);
  expect(day.setpoints[6 * 2 + 1]).toBe(off);
});

test('people add up, awake and asleep apart', () => {
  const awake = { sensible: 75, vapour: 2e-5, species: [5] };
  const asleep = { sensible: 60, vapour: 1e-5, species: [4] };
  const stays = [
    { days: EVERY_DAY, from: 0, to: 420, room: 0, asleep: true },
    { days: EVERY_DAY, from: 420, to: 480, room: 1, asleep: false },
  ];
  const person = { name: 'someone', schedule: stays, awake, asleep };
  const { day } = layOut(quietHousehold(HOME, { people: [person, person] }), MONDAY);
  expect(day.occupants[3 * 2]).toBe(2);
  expect(day.peopleHeat[3 * 2]).toBe(120);
  expect(day.peopleVapour[7 * 2 + 1]).toBe(4e-5);
  expect(day.peopleSpecies[7 * 2 + 1]).toBe(10);
  expect(day.occupants[8 * 2 + 1]).toBe(0);
});

test('windows open by the clock unless all who live in the home are away that day', () => {
  const wednesday = [{ from: 104, to: 104 }];
  const allDay = { days: EVERY_DAY, from: 0, to: 1440 };
  const person = (more: object) => ({
    ...{ name: 'somebody', schedule: [{ ...allDay, room: 0, asleep: false }], ...more },
    awake: { sensible: 75, vapour: 0, species: [0] },
    asleep: { sensible: 75, vapour: 0, species: [0] },
  });
  const evening = { days: EVERY_DAY, from: 1320, to: 1320 + 240, value: 0.5 };
  const openHours = (people: Household['people']) => {
    const household = quietHousehold(HOME, {
      people,
      openings: [{ base: 0, spells: [evening] }],
    });
    return [1, 2, 3].map((k) => {
      const { day } = layOut(household, MONDAY + k * 86_400);
      expect([...day.openTimes].map((share) => 0.5 * share)).toEqual([...day.openings]);
      return [...day.openings].flatMap((share, hour) => (share > 0 ? [hour] : []));
    });
  };
  const nightly = [0, 1, 22, 23];
  const away = person({ holidays: wednesday });
  // Opened on Tuesday evening they are shut at two; those of Wednesday stay shut.
  expect(openHours([away])).toEqual([nightly, [0, 1], [22, 23]]);
  expect(openHours([away, person({ guest: true })])).toEqual([nightly, [0, 1], [22, 23]]);
  expect(openHours([away, person({})])).toEqual([nightly, nightly, nightly]);
  expect(openHours([])).toEqual([nightly, nightly, nightly]);
});
