import { describe, expect, test } from 'vitest';
import type { Household } from '../../../src/control/household.ts';
import type { Cooler, Home } from '../../../src/home/home.ts';
import { compare } from '../../reference/compare.ts';
import { integrateHome } from '../../reference/integrate-home.ts';
import { always, NEW_YEAR } from '../homes.ts';
import { randomHousehold, randomNumbers } from '../random-home.ts';
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

/**
 * A cold spell that turns hot, in rooms of air, surfaces and two stores of water. Where a setting
 * jumps, heating or cooling runs at its limit until the room is there, and what is left of that step is
 * not told apart: the energy of such steps is off in proportion to the step, some kJ a jump. That is
 * why the small loads of these days are within a thousandth at five minutes.
 */
const CASES = [
  { name: 'one setting of each all day', energyAt: 600, live: steady },
  { name: 'night setback and cooler evenings', energyAt: 300, live: jumping },
] as const;

describe.each(CASES)('heating and cooling limits, $name', ({ name, energyAt, live }) => {
  test.each([1, 6])('home %i', (seed) => {
    const home = cooled(drawn(seed), seed);
    const household = live(evenly(randomHousehold(home, seed)), home);
    const weather = warming();
    const hours = DAYS * 24;
    const exact = integrateHome(home, household, weather, {
      start: NEW_YEAR,
      hours,
      stretch: STEP,
    });
    const run = (dt: number) => recordRun(runInput({ home, weather }, { household, hours, dt }));
    const [got, fine] = [run(STEP), run(STEP / 2)];
    for (const wet of [got.room.condensation, got.room.wallCondensation]) {
      expect(wet.every((rates) => rates.every((rate) => rate === 0))).toBe(true);
    }
    const where = `${name}, with cooling, home ${seed} of ${ROOMS} rooms`;
    compareClimate(`${where}, 10 min`, got, exact);
    const asked = energyAt === STEP ? got : fine;
    for (const [what, series, of] of [
      ['heat', asked.room.heating, exact.heat],
      ['cooling', asked.room.cooling, exact.cooling],
    ] as const) {
      expect(kWhOf(of)).toBeGreaterThan(5);
      compare({
        ...ABOUT,
        what: `${what} of ${DAYS} days: ${where}, ${energyAt / 60} min`,
        unit: 'kWh',
        expected: kWhOf(of),
        got: kWhOf(series, energyAt),
        tolerance: { relative: 0.001 },
        because: 'what a run promises',
      });
    }
    // Of the first order or better, to a tenth.
    const [coarse, half] = [got, fine].map(({ room }) => apart(room.airTemperature, exact.air));
    expect(half! / coarse!).toBeLessThan(0.55);
  });
});

/** Coolers with and without a coil, some too small for the afternoon, drawn at random. */
function cooled(home: Home, seed: number): Home {
  const random = randomNumbers(seed + 2000);
  const cooling = home.rooms.slice(0, -1).map(
    (_, room): Cooler => ({
      ...{ name: `unit ${room}`, room, source: room === 1 ? 'split' : 'reversible heat pump' },
      power: 1000 + 2000 * random(),
      eer: { outdoor: [25, 35], value: [4, 3] },
      coil: room === 1 ? { bypassFactor: 0.15, temperature: 9, airflow: 0.1 } : null,
      ...{ exhaust: 0, radiantShare: room === 2 ? 0.3 : 0 },
    }),
  );
  // January is summer there.
  return { ...home, cooling, site: { ...home.site, latitude: -40 } };
}

/** Windows shut, doors open, and nobody touches a thermostat. */
function steady(household: Household, home: Home): Household {
  return {
    ...jumping(household, home),
    setpoints: household.setpoints.map(({ base }) => always(base)),
    cooling: home.rooms.map(() => always(23)),
  };
}

/** Windows shut and doors open; rooms are kept cooler by night and in the evening. */
function jumping(household: Household, home: Home): Household {
  const evening = { days: 0b1111111, from: 1080, to: 1320, value: 22 };
  return {
    ...household,
    openings: household.openings.map(() => always(0)),
    doorways: household.doorways.map(() => always(1)),
    cooling: home.rooms.map(() => ({ base: 23, spells: [evening] })),
  };
}

function warming() {
  const day = (hour: number): number => Math.sin((2 * Math.PI * (hour - 9)) / 24);
  return lastDays(
    {
      temperature: (t) => 3 + 5 * (t / 86_400) + 8 * day(t / 3600),
      humidityRatio: (t) => 0.0042 + 0.0009 * (t / 86_400),
      wind: (t) => 4 + 3 * Math.sin(t / 3600 / 19),
      direct: (t) => Math.max(0, 800 * day(t / 3600 + 3)),
      diffuse: (t) => Math.max(0, 300 * day(t / 3600 + 3)),
    },
    DAYS + 1,
  );
}
