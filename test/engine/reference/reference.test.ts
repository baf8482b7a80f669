import { describe, expect, test } from 'vitest';
import type { Household } from '../../../src/control/household.ts';
import type { Home } from '../../../src/home/home.ts';
import { compare } from '../../reference/compare.ts';
import { type Integrated, integrateHome } from '../../reference/integrate-home.ts';
import { always, NEW_YEAR } from '../homes.ts';
import { randomHousehold } from '../random-home.ts';
import { recordRun, runInput } from '../record-run.ts';
import { lastDays } from '../short-weather.ts';
import {
  ABOUT,
  apart,
  compareClimate,
  drawn,
  evenly,
  kWhOf,
  ROOMS,
  STEP,
} from './reference-cases.ts';

const DAYS = 6;

/** Windows shut and doors open, all day. */
const openInside = (h: Household): Household => ({
  ...h,
  openings: h.openings.map(() => always(0)),
  doorways: h.doorways.map(() => always(1)),
});

/** How a household is simplified, and what of it is left. */
const CASES: readonly {
  name: string;
  dt: number;
  live: (h: Household, home: Home) => Household;
}[] = [
  {
    name: 'heat by the clock, no thermostat',
    dt: 600,
    live: (h, home) => ({
      ...openInside(h),
      activities: [...h.activities, ...home.rooms.map((_, room) => fire(room))],
      setpoints: h.setpoints.map(() => always(Number.NEGATIVE_INFINITY)),
    }),
  },
  {
    name: 'one setting all day',
    dt: 600,
    live: (h) => ({
      ...openInside(h),
      setpoints: h.setpoints.map(({ base }) => always(base)),
    }),
  },
  {
    name: 'night setback',
    dt: 600,
    live: openInside,
  },
  // Wide open windows and doors that open between warm and cold rooms move air within a few
  // minutes; that is followed to a fiftieth of a kelvin with steps of five.
  { name: 'night setback, airing, doors shut at night', dt: 300, live: (h) => h },
];

describe.each(CASES)('$name', ({ name, dt, live }) => {
  test.each([1, 6])('home %i', (seed) => {
    const home = drawn(seed);
    const household = live(evenly(randomHousehold(home, seed)), home);
    const weather = wintry();
    const hours = DAYS * 24;
    const exact = integrateHome(home, household, weather, {
      start: NEW_YEAR,
      hours,
      stretch: STEP,
    });
    const got = recordRun(runInput({ home, weather }, { household, hours, dt }));
    expect(got.room.condensation.every((c) => c.every((rate) => rate === 0))).toBe(true);
    const where = `${name}, home ${seed} of ${ROOMS} rooms, ${dt / 60} min`;
    compareClimate(where, got, exact);
    compare({
      ...ABOUT,
      what: `carbon dioxide, RMS of all rooms: ${where}`,
      unit: 'ppm',
      expected: 0,
      got: apart(got.species[0]!, exact.species[0]!),
      tolerance: { absolute: 10 },
      because: 'a fifth of what a good sensor can tell',
    });
    if (exact.heat.every((heat) => heat.every((w) => w === 0))) return;
    const tenMinutes = recordRun(runInput({ home, weather }, { household, hours, dt: STEP }));
    compare({
      ...ABOUT,
      what: `heat of ${DAYS} days: ${name}, home ${seed} of ${ROOMS} rooms, 10 min`,
      unit: 'kWh',
      expected: kWhOf(exact.heat),
      got: kWhOf(tenMinutes.room.heating),
      tolerance: { relative: 0.001 },
      because: 'what a run promises',
    });
  });
});

test('the reference itself does not hang on where it is cut', () => {
  const home = drawn(1);
  const household = CASES[2]!.live(evenly(randomHousehold(home, 1)), home);
  const of = (stretch: number): Integrated =>
    integrateHome(home, household, wintry(), { start: NEW_YEAR, hours: 24, stretch });
  const [coarse, fine] = [of(600), of(300)];
  coarse.heat.forEach((heat, i) => {
    const sum = (series: Float64Array): number => series.reduce((a, b) => a + b, 0);
    expect(sum(fine.heat[i]!) / 2).toBeCloseTo(sum(heat), 1);
  });
});

/** Heat in a room from six in the morning to ten at night. */
function fire(room: number): Household['activities'][number] {
  return {
    name: `fire ${room}`,
    room,
    when: [{ days: 0b1111111, from: 360, to: 1320 }],
    heat: 500 + 100 * room,
    ...{ electricity: 0, vapour: 0, drying: 0, species: [0, 0] },
  };
}

function wintry() {
  const day = (hour: number): number => Math.sin((2 * Math.PI * (hour - 9)) / 24);
  return lastDays(
    {
      temperature: (t) => 3 + 3.5 * day(t / 3600) + 2 * Math.sin(t / 3600 / 31),
      humidityRatio: (t) => 0.0035 + 0.0006 * Math.sin(t / 3600 / 23),
      wind: (t) => 4 + 3 * Math.sin(t / 3600 / 19),
      direct: (t) => Math.max(0, 350 * day(t / 3600 + 3)),
      diffuse: (t) => Math.max(0, 150 * day(t / 3600 + 3)),
    },
    DAYS + 1,
  );
}
