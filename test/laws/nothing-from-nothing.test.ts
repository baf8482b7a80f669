import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Home } from '../../src/home/home.ts';
import { humidityRatioFromRelativeHumidity } from '../../src/physics/moist-air/humidity-ratio.ts';
import {
  always,
  bareHome,
  bareRoom,
  madeWeather,
  NO_BUFFER,
  quietHousehold,
} from '../engine/homes.ts';
import { randomHome, swingingWeather } from '../engine/random-home.ts';
import { last, recordRun, runInput } from '../engine/record-run.ts';
import { lastDays } from '../engine/short-weather.ts';

/** A face that looks down sees no sky. [deg] */
const DOWN = 180;
const MILD = humidityRatioFromRelativeHumidity(12, 50, 101_325);

/** Without what makes a difference by itself: a sky colder than the air, neighbours, the sun, falling dust. */
function indifferent(home: Home): Home {
  return {
    ...home,
    rooms: home.rooms.map((r) => ({ ...r, deposition: [] })),
    elements: home.elements.map((e) =>
      e.far.to === 'outdoors'
        ? { ...e, far: { ...e.far, tilt: DOWN } }
        : e.far.to === 'neighbour'
          ? { ...e, far: { to: 'nothing' } }
          : e,
    ),
    panes: home.panes.map((p) => ({ ...p, tilt: DOWN })),
    species: home.species.map((s) => ({ ...s, penetration: 1, windowPenetration: 1 })),
  };
}

test('a home as warm, as humid and as clean as outdoors stays so', () => {
  const weather = lastDays({ temperature: () => 12, humidityRatio: () => MILD, wind: () => 5 }, 6);
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 1, max: 6 }), (seed, n) => {
      const home = indifferent(randomHome(n, seed));
      const household = quietHousehold(home, { openings: home.openings.map(() => always(1)) });
      const { room, species } = recordRun(runInput({ home, weather }, { household, hours: 96 }));
      for (let i = 0; i < n; i++) {
        expect(Math.abs(last(room.airTemperature[i]!) - 12)).toBeLessThan(1e-9);
        expect(Math.abs(last(room.humidityRatio[i]!) / MILD - 1)).toBeLessThan(1e-9);
        expect(room.heating[i]!.every((w) => w === 0)).toBe(true);
        home.species.forEach(({ outdoor }, q) => {
          expect(Math.abs(last(species[q]![i]!) / outdoor - 1)).toBeLessThan(1e-9);
        });
      }
    }),
    { numRuns: 15, seed: 5 },
  );
});

describe('an isolated room', () => {
  test('with nothing in or out keeps its warmth, its vapour and its air for ever', () => {
    const home = bareHome([bareRoom('box', 50, { mass: { capacity: 1e6, area: 20 } })], {
      species: [{ name: 'co2', unit: 'ppm', outdoor: 420, penetration: 1 }],
    });
    const weather = swingingWeather();
    const { room, species } = recordRun(runInput({ home, weather }, { hours: 2400, dt: 3600 }));
    for (const series of [room.airTemperature[0]!, room.vapourPressure[0]!, species[0]![0]!]) {
      const first = series[0]!;
      expect(Math.max(...series.map((value) => Math.abs(value / first - 1)))).toBeLessThan(1e-12);
    }
  });

  test('never warms, and a home without heat never gets warmer than outdoors ever was', () => {
    // Warm for a day, then ever colder.
    const weather = lastDays({ temperature: (t) => 20 - Math.max(0, t - 86_400) / 40_000 }, 10);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 1, max: 5 }), (seed, n) => {
        const drawn = indifferent(randomHome(n, seed));
        // The ground stands at the mean of the weather and would warm floors in the end.
        const elements = drawn.elements.filter((e) => e.far.to !== 'ground');
        const home = { ...drawn, elements, rooms: drawn.rooms.map(dry) };
        const { room } = recordRun(runInput({ home, weather }, { hours: 240 }));
        for (const series of room.airTemperature) {
          expect(Math.max(...series)).toBeLessThanOrEqual(20 + 1e-9);
        }
      }),
      { numRuns: 10, seed: 9 },
    );
  });
});

/** Without the heat that vapour brings when it is taken up. */
const dry = <T extends object>(room: T) => ({ ...room, buffer: NO_BUFFER });

test('twice the leakage leaves half the carbon dioxide', () => {
  const rise = (flow: number): number => {
    const home = bareHome([bareRoom('room', 40)], {
      leakage: { how: { by: 'rate', flow }, share: [1], ach50: null },
      species: [{ name: 'co2', unit: 'ppm', outdoor: 420, penetration: 1 }],
    });
    const household = quietHousehold(home, {
      activities: [
        {
          ...{ name: 'people', room: 0, heat: 0, electricity: 0, vapour: 0, drying: 0 },
          when: [{ days: 0b1111111, from: 0, to: 1440 }],
          species: [10],
        },
      ],
    });
    const weather = madeWeather({}, { hours: 24 });
    const more = { household, spinUpDays: 10 };
    return last(recordRun(runInput({ home, weather }, more)).species[0]![0]!) - 420;
  };
  for (const flow of [0.002, 0.01, 0.05]) {
    expect(rise(flow) / rise(2 * flow)).toBeCloseTo(2, 6);
  }
});
