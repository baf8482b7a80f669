import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Household } from '../../src/control/household.ts';
import type { Home } from '../../src/home/home.ts';
import { bareHome, bareRoom, quietHousehold } from '../engine/homes.ts';
import { randomHome, randomHousehold, swingingWeather } from '../engine/random-home.ts';
import { recordRun, runInput, total } from '../engine/record-run.ts';
import { lastDays } from '../engine/short-weather.ts';
import { element } from '../engine/worked-house.ts';

const EVERY_DAY = 0b1111111;

/** Emitters that answer at once; one that lags goes on giving after its valve has shut. */
const prompt = (home: Home): Home => ({
  ...home,
  emitters: home.emitters.map((e) => ({ ...e, lag: 0 })),
});

/** Emitters that reach any setting. */
const strong = (home: Home): Home => ({
  ...home,
  emitters: home.emitters.map((e) => ({ ...e, ratedPower: 20 * e.ratedPower })),
  sources: home.sources.map((s) => ({ ...s, power: 1e6 })),
});

const isOn = (household: Household, room: number): boolean =>
  Number.isFinite(household.setpoints[room]!.base);

function warmer(household: Household, by: number): Household {
  return {
    ...household,
    setpoints: household.setpoints.map(({ base, spells }) => ({
      base: base + by,
      spells: spells.map((s) => ({ ...s, value: s.value + by })),
    })),
  };
}

describe('a higher setting', () => {
  const weather = swingingWeather();

  test('takes more heat and leaves no heated room colder', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e6 }),
        fc.integer({ min: 1, max: 5 }),
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        (seed, rooms, by) => {
          const home = strong(randomHome(rooms, seed));
          const household = randomHousehold(home, seed);
          const heated = home.emitters.map((e) => e.room).filter((i) => isOn(household, i));
          fc.pre(heated.length > 0);
          const of = (h: Household) =>
            recordRun(
              runInput({ home, weather }, { household: h, hours: 240, spinUpDays: 4, dt: 900 }),
            );
          const [low, high] = [of(household), of(warmer(household, by))];
          expect(total(high.run.ledger.energy.heating)).toBeGreaterThan(
            total(low.run.ledger.energy.heating),
          );
          for (const i of heated) {
            const mean = (of: typeof low): number => total(of.room.airTemperature[i]!) / (240 * 4);
            expect(mean(high)).toBeGreaterThan(mean(low));
          }
        },
      ),
      { numRuns: 12, seed: 2 },
    );
  });
});

describe('a thermostat', () => {
  test('never warms a room beyond its setting, however strong its heater and heavy its walls', () => {
    fc.assert(
      fc.property(
        fc.record({
          power: fc.double({ min: 200, max: 50_000, noNaN: true }),
          mass: fc.double({ min: 1e4, max: 1e8, noNaN: true }),
          factor: fc.double({ min: 1, max: 20, noNaN: true }),
          radiantShare: fc.double({ min: 0, max: 0.9, noNaN: true }),
          outdoor: fc.double({ min: -20, max: 14, noNaN: true }),
          dt: fc.constantFrom(60, 300, 600, 1800, 3600),
        }),
        ({ power, mass, factor, radiantShare, outdoor, dt }) => {
          const room = bareRoom('room', 50, {
            furnishingFactor: factor,
            mass: { capacity: mass, area: 30 },
          });
          const bare = bareHome([room], {
            elements: [element('wall', 0, 'wall', 40, 0.7)],
            leakage: { how: { by: 'rate', flow: 0.01 }, share: [1], ach50: null },
          });
          const home: Home = {
            ...bare,
            sources: [
              {
                ...{ name: 'boiler', fuel: 'gas', waterTemperature: 60, power: 1e6 },
                conversion: { by: 'efficiency', efficiency: 0.9 },
              },
            ],
            emitters: [
              {
                ...{ name: 'radiator', room: 0, source: 0, ratedPower: power, ratedExcess: 50 },
                ...{ exponent: 1.3, radiantShare, lag: 0 },
              },
            ],
          };
          const night = { days: EVERY_DAY, from: 1320, to: 1320 + 480, value: 16 };
          const household = quietHousehold(home, { setpoints: [{ base: 20, spells: [night] }] });
          const weather = lastDays({ temperature: () => outdoor }, 5);
          const { room: got } = recordRun(
            runInput({ home, weather }, { household, hours: 96, dt }),
          );
          expect(Math.max(...got.airTemperature[0]!)).toBeLessThanOrEqual(20 + 1e-6);
          expect(Math.min(...got.heating[0]!)).toBeGreaterThanOrEqual(0);
          expect(Math.max(...got.heating[0]!)).toBeLessThanOrEqual(power * 1.5);
        },
      ),
      { numRuns: 40, seed: 4 },
    );
  });

  test('never takes heat out of a room, and heats none that is above its setting', () => {
    const weather = swingingWeather();
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 2, max: 6 }), (seed, n) => {
        const home = prompt(randomHome(n, seed));
        const household = randomHousehold(home, seed);
        const input = runInput({ home, weather }, { household, hours: 96, spinUpDays: 2 });
        const { room } = recordRun(input);
        room.heating.forEach((heat, i) => {
          const highest = Math.max(
            household.setpoints[i]!.base,
            ...household.setpoints[i]!.spells.map((s) => s.value),
          );
          expect(Math.min(...heat)).toBeGreaterThanOrEqual(0);
          // Heated throughout a step, it ends no warmer than its setting.
          const throughout = room.airTemperature[i]!.filter(
            (_, s) => heat[s]! > 0 && heat[s - 1]! > 0 && heat[s + 1]! > 0,
          );
          expect(throughout.every((t) => t < highest + 1e-6)).toBe(true);
        });
      }),
      { numRuns: 12, seed: 6 },
    );
  });
});
