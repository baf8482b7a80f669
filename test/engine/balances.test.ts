import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { simulate } from '../../src/engine/simulate.ts';
import { NEW_YEAR } from './homes.ts';
import { randomHome, randomHousehold, swingingWeather } from './random-home.ts';

// What a year of double-precision sums promises, with room for unlucky homes.
const ROUNDING = 1e-9;
const weather = swingingWeather();

function residualsOf(rooms: number, seed: number, dt: number, days: number): number[] {
  const home = randomHome(rooms, seed);
  const household = randomHousehold(home, seed);
  const { ledger } = simulate(
    { home, household, weather, dt, start: NEW_YEAR, hours: 24 * days, spinUpDays: 2 },
    [],
  );
  const { energy, water, air, species } = ledger.residual;
  return [energy, water, air, ...species];
}

describe('what goes in comes out or stays', () => {
  test('over a year of a six-room home with everything in it', () => {
    for (const residual of residualsOf(6, 1, 600, 365)) expect(residual).toBeLessThan(ROUNDING);
  });

  test('over a month of homes drawn at random, at any step', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 1, max: 1e6 }),
        fc.constantFrom(60, 300, 600, 900, 1800, 3600),
        (rooms, seed, dt) => {
          for (const residual of residualsOf(rooms, seed, dt, dt < 300 ? 4 : 30)) {
            expect(residual).toBeLessThan(ROUNDING);
          }
        },
      ),
      { numRuns: 30, seed: 7 },
    );
  });
});
