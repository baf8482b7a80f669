import { describe, expect, test } from 'vitest';
import type { Home } from '../../src/home/home.ts';
import { bareHome, bareRoom } from '../engine/homes.ts';
import { recordRun, runInput } from '../engine/record-run.ts';
import { lastDays } from '../engine/short-weather.ts';
import { pane } from '../engine/worked-house.ts';

/** Four rooms with a window each: north, east, south, west. */
function lookingRound(latitude: number): Home {
  const rooms = ['north', 'east', 'south', 'west'].map((name) => bareRoom(name, 30));
  const panes = rooms.map(({ name }, i) => ({
    ...pane(name, i, 2, 2),
    ...{ gValue: 0.7, unshaded: 1, azimuth: 90 * i, tilt: 90 },
  }));
  const leakage = {
    how: { by: 'rate', flow: 0.4 },
    share: [0.25, 0.25, 0.25, 0.25],
    ach50: null,
  } as const;
  return bareHome(rooms, {
    panes,
    leakage,
    site: { latitude, longitude: 0, elevation: 0, albedo: 0.2 },
  });
}

/** Sun of a clear day through each window. [kWh] */
function sunOf(latitude: number, day: number): number[] {
  const home = lookingRound(latitude);
  // Columns hold over the hour that begins at t.
  const lit = (t: number): number => Math.max(0, Math.sin((2 * Math.PI * (t / 3600 - 5.5)) / 24));
  const weather = lastDays({ direct: (t) => 800 * lit(t), diffuse: (t) => 80 * lit(t) }, 366);
  const start = weather.start + day * 86_400;
  const { run } = recordRun(runInput({ home, weather }, { start, dt: 3600 }));
  return [...run.ledger.energy.sun].slice(0, 4).map((joules) => joules / 3.6e6);
}

const [MIDSUMMER, MIDWINTER, MARCH] = [171, 354, 79];

describe('the sun', () => {
  test.each([25, 40, 54])(
    'at %i degrees stands in the south, at as many south in the north',
    (latitude) => {
      for (const [north, south] of [
        [MIDWINTER, MIDSUMMER],
        [MARCH, MARCH],
      ] as const) {
        const [, , upThere = 0] = sunOf(latitude, north);
        const [downThere = 0, , shade = 0] = sunOf(-latitude, south);
        expect(upThere).toBeGreaterThan(1);
        expect(downThere / upThere).toBeGreaterThan(0.95);
        expect(downThere / upThere).toBeLessThan(1.1); // the earth is nearer the sun at New Year; here the sky is given
        expect(downThere).toBeGreaterThan(3 * shade);
      }
    },
  );

  test('shines as long from the east as from the west', () => {
    const [, east = 0, , west = 0] = sunOf(45, MARCH);
    expect(east / west).toBeGreaterThan(0.9);
    expect(east / west).toBeLessThan(1.1);
  });

  test('gives a window what sky and ground give where it never stands', () => {
    const [north = 0] = sunOf(54, MIDWINTER);
    const [, , south = 0] = sunOf(54, MIDWINTER);
    expect(north).toBeGreaterThan(0);
    expect(north).toBeLessThan(0.2 * south);
  });
});
