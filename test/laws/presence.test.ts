import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Automation,
  PLAIN_THERMOSTAT,
  type PresenceSensor,
  type Thermostat,
} from '../../src/control/automation.ts';
import type { Household } from '../../src/control/household.ts';
import { simulate } from '../../src/engine/simulate.ts';
import type { Home } from '../../src/home/home.ts';
import { noAutomation } from '../control/no-automation.ts';
import { NEW_YEAR } from '../engine/homes.ts';
import { randomHome, randomHousehold, swingingWeather } from '../engine/random-home.ts';

const weather = swingingWeather();
const ROOMS = 3;
const SEES_ALL: PresenceSensor = { holdOn: 0, delay: 0, missesAwake: 0, missesAsleep: 0 };
const GATED: Thermostat = {
  ...PLAIN_THERMOSTAT,
  gate: { present: 'in the room', windowsShut: false },
  otherwise: 16,
};

function gated(sensor: PresenceSensor | null, more: Partial<Thermostat> = {}): Automation {
  return {
    ...noAutomation(ROOMS),
    presenceSensors: Array.from({ length: ROOMS }, () => sensor),
    thermostats: Array.from({ length: ROOMS }, () => ({ ...GATED, ...more })),
  };
}

/** All rooms programmed alike, with emitters that are never too weak. */
function drawn(seed: number): { readonly home: Home; readonly household: Household } {
  const made = randomHome(ROOMS, seed);
  const home = {
    ...made,
    emitters: made.rooms.map((r, room) => ({
      ...{ name: r.name, room, source: 0, ratedPower: 1e6, ratedExcess: 50, exponent: 1.3 },
      ...{ radiantShare: 0.3, lag: 0 },
    })),
    sources: made.sources.map((source) => ({ ...source, power: Number.POSITIVE_INFINITY })),
  };
  const household = randomHousehold(home, seed);
  const setpoints = home.rooms.map(() => ({ base: 20, spells: [] }));
  return { home, household: { ...household, setpoints } };
}

interface Followed {
  readonly values: readonly number[];
  readonly occupants: readonly number[];
  readonly heat: number;
}

function follow(
  home: Home,
  household: Household,
  automation: Automation,
  spinUpDays = 2,
): Followed {
  const values: number[] = [];
  const occupants: number[] = [];
  let heat = 0;
  const whole = { home, household, automation, weather, dt: 600 };
  simulate({ ...whole, start: NEW_YEAR, hours: 24 * 8, spinUpDays: spinUpDays }, [
    ({ room, steps, rooms, dt }) => {
      for (let k = 0; k < steps * rooms; k++) {
        values.push(room.airTemperature[k]!, room.relativeHumidity[k]!, room.heating[k]!);
        occupants.push(room.occupants[k]!);
        heat += room.heating[k]! * dt;
      }
    },
  ]);
  return { values, occupants, heat };
}

const holds = (law: (seed: number) => void): void => {
  fc.assert(fc.property(fc.integer({ min: 1, max: 1e6 }), law), { numRuns: 6, seed: 21 });
};

describe('heating by presence', () => {
  test('with a sensor that never sees anybody is the setback alone', () => {
    holds((seed) => {
      const { home, household } = drawn(seed);
      // The same first guess, but 16 °C at all hours.
      const low = [{ days: 127, from: 0, to: 1440, value: GATED.otherwise }];
      const setpoints = household.setpoints.map(({ base }) => ({ base, spells: low }));
      const setback = follow(home, { ...household, setpoints }, noAutomation(ROOMS)).values;
      expect(follow(home, household, gated(null)).values).toEqual(setback);
      const blind = { ...SEES_ALL, missesAwake: 1, missesAsleep: 1 };
      expect(follow(home, household, gated(blind)).values).toEqual(setback);
    });
  });

  test('in rooms that are never empty is the programme', () => {
    holds((seed) => {
      const { home, household } = drawn(seed);
      const people = home.rooms.map((_, room) => ({
        ...household.people[0]!,
        schedule: [{ days: 127, from: 0, to: 1440, room, asleep: false }],
      }));
      const always = { ...household, people };
      expect(follow(home, always, gated(SEES_ALL)).values).toEqual(
        follow(home, always, noAutomation(ROOMS)).values,
      );
    });
  });

  test('takes no less heat with a longer hold or a warmer setback, and no more than always on', () => {
    holds((seed) => {
      const { home, household } = drawn(seed);
      // Without a spin-up all begin alike; otherwise walls already warmer would ask for less.
      const heat = (automation: Automation): number => follow(home, household, automation, 0).heat;
      const all = heat(noAutomation(ROOMS));
      const rising = (values: readonly number[]): void => {
        for (let k = 1; k < values.length; k++) {
          expect(values[k]).toBeGreaterThanOrEqual(values[k - 1]! * (1 - 1e-9));
        }
        expect(values.at(-1)).toBeGreaterThan(values[0]!);
      };
      const held = [0, 1200, 3600, 14_400];
      rising([...held.map((holdOn) => heat(gated({ ...SEES_ALL, holdOn }))), all]);
      rising([...held.map((holdOff) => heat(gated(SEES_ALL, { holdOff }))), all]);
      rising([...[10, 14, 16, 18].map((otherwise) => heat(gated(SEES_ALL, { otherwise }))), all]);
    });
  });

  test('that misses people heats no more than one that sees all', () => {
    holds((seed) => {
      const { home, household } = drawn(seed);
      const heat = (misses: number): number =>
        follow(
          home,
          household,
          gated({ ...SEES_ALL, missesAwake: misses, missesAsleep: misses }),
          0,
        ).heat;
      expect(heat(0.3)).toBeLessThan(heat(0));
      expect(heat(0.8)).toBeLessThan(heat(0.3));
    });
  });

  test('leaves people where they are: who is in a room is not for the sensor to say', () => {
    holds((seed) => {
      const { home, household } = drawn(seed);
      const blind = { ...SEES_ALL, missesAwake: 0.9, missesAsleep: 0.9, holdOn: 7200, delay: 1800 };
      const truth = follow(home, household, noAutomation(ROOMS)).occupants;
      expect(follow(home, household, gated(blind)).occupants).toEqual(truth);
      expect(Math.max(...truth)).toBeGreaterThan(0);
    });
  });
});
