import { describe, expect, test } from 'vitest';
import type { Home } from '../../../src/home/home.ts';
import { compare } from '../../reference/compare.ts';
import { always, bareHome, bareRoom, ideallyHeated, quietHousehold } from '../homes.ts';
import { LUMPED_LOSS, lumpedRoom } from '../lumped-room.ts';
import { recordRun, runInput } from '../record-run.ts';
import { AIR_HEAT } from '../reference-air.ts';
import { lastDays, steadyDay } from '../short-weather.ts';
import { lagBehind, size, waveIn } from '../wave.ts';

const ABOUT = { topic: 'Dynamics, through the simulator', mark: 'closed form' } as const;
const DAY = 86_400;

/** Temperature at a whole hour: between the means of the minutes before and after. */
const atHour = (series: Float64Array, hour: number): number =>
  (series[hour * 60 - 1]! + series[hour * 60]!) / 2;

/** Room kept at 20 °C with 20 °C outdoors, heating off and 0 °C outdoors from the first hour on. */
function letGo(home: Home, hours: number) {
  const weather = lastDays({ temperature: (t) => (t < 8 * DAY ? 20 : 0) }, 11, 10, 8);
  const off = [{ days: 0b1000001, from: 0, to: 1440, value: Number.NEGATIVE_INFINITY }];
  const household = quietHousehold(home, { setpoints: [{ base: 20, spells: off }] });
  return recordRun(runInput({ home, weather }, { household, dt: 60, hours, spinUpDays: 8 }));
}

describe('one heat capacity with a time constant of 20 h', () => {
  test.each([
    { hour: 8, expected: 13.406 },
    { hour: 20, expected: 7.358 },
  ])('has cooled from 20 to $expected °C after $hour h at 0 °C', ({ hour, expected }) => {
    const air = letGo(lumpedRoom(20), 24).room.airTemperature[0]!;
    compare({
      ...ABOUT,
      what: `one capacity, 20 h, from 20 °C with 0 °C outdoors, after ${hour} h`,
      unit: '°C',
      source: 'exponential decay',
      expected,
      got: atHour(air, hour),
      tolerance: { absolute: 1e-3 },
      because: 'print rounding; one-minute steps',
    });
  });

  test('damps and delays a daily sine', () => {
    const home = lumpedRoom(20);
    const weather = steadyDay({ temperature: (t) => 10 + 5 * Math.cos((2 * Math.PI * t) / DAY) });
    const input = runInput({ home, weather }, { dt: 60, spinUpDays: 12 });
    const wave = waveIn(recordRun(input).room.airTemperature[0]!, 60, DAY);
    const source = 'periodic solution of one capacity';
    compare({
      ...ABOUT,
      what: 'one capacity, 20 h: swing indoors over swing outdoors, daily sine',
      unit: '-',
      source,
      expected: 0.1876,
      got: size(wave) / 5,
      tolerance: { absolute: 0.00015 },
      because: 'print rounding; one-minute steps',
    });
    compare({
      ...ABOUT,
      what: 'one capacity, 20 h: lag behind a daily sine',
      unit: 'h',
      source,
      expected: 5.279,
      got: lagBehind(wave, [5, 0], DAY) / 3600,
      tolerance: { absolute: 1e-3 },
      because: 'print rounding; one-minute steps',
    });
  });
});

describe('air of 200 Wh/K and mass of 8000 Wh/K', () => {
  // Air to mass 1000, air to outdoors 100 (by leakage), mass to outdoors 100 W/K.
  const home = ideallyHeated(
    bareHome([bareRoom('room', 100, { furnishingFactor: (200 * 3600) / (100 * AIR_HEAT) })], {
      longWave: 1e-6, // next to none, yet the radiant node follows the mass
      elements: [
        {
          name: 'mass',
          room: 0,
          kind: 'wall',
          area: 100,
          chain: { resistance: [0.1, 1], capacity: [(8000 * 3600) / 100] },
          far: { to: 'outdoors', azimuth: 0, tilt: 180, absorptance: 0 },
        },
      ],
      leakage: { how: { by: 'rate', flow: 100 / AIR_HEAT }, share: [1], ach50: null },
    }),
  );
  const { room } = letGo(home, 25);
  const air = room.airTemperature[0]!;
  // Operative temperature is halfway between air and the mass's face, here the mass itself.
  const mass = room.operativeTemperature[0]!.map((t, s) => 2 * t - air[s]!);

  test.each([
    { hour: 1, ofAir: 17.878, ofMass: 19.576 },
    { hour: 8, ofAir: 15.174, ofMass: 16.621 },
    { hour: 24, ofAir: 10.439, ofMass: 11.434 },
  ])('are at $ofAir and $ofMass °C after $hour h', ({ hour, ofAir, ofMass }) => {
    for (const { what, series, expected } of [
      { what: 'air', series: air, expected: ofAir },
      { what: 'mass', series: mass, expected: ofMass },
    ]) {
      compare({
        ...ABOUT,
        what: `two capacities, ${what} after ${hour} h from 20 °C with 0 °C outdoors`,
        unit: '°C',
        source: 'two exponentials, 0.1781 and 42.774 h',
        expected,
        got: atHour(series, hour),
        tolerance: { absolute: 0.005 },
        because: 'one-minute steps against a time constant of eleven',
      });
    }
  });
});

test('a room loses exactly what its leakage takes', () => {
  const home = lumpedRoom(20);
  const weather = lastDays({ temperature: () => 5 }, 3);
  const household = quietHousehold(home, { setpoints: [always(20)] });
  const { run } = recordRun(runInput({ home, weather }, { household, spinUpDays: 0 }));
  const [heating, leakage] = [run.ledger.energy.heating[0]!, run.ledger.energy.leakage[0]!];
  expect(heating).toBeCloseTo(15 * LUMPED_LOSS * DAY, 3);
  expect(leakage).toBeCloseTo(-heating, 3);
});
