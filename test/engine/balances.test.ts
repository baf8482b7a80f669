import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { simulate } from '../../src/engine/simulate.ts';
import type { DeviceAction } from '../../src/home/devices.ts';
import type { Home } from '../../src/home/home.ts';
import { noAutomation } from '../control/no-automation.ts';
import { NEW_YEAR, runAlways } from './homes.ts';
import { randomHome, randomHousehold, swingingWeather } from './random-home.ts';
import { total } from './record-run.ts';

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

/** A random home that air blows through, with fans, a stove and leaks that hold particles back. */
function draughtyHome(rooms: number, seed: number): Home {
  const home = randomHome(rooms, seed);
  const last = rooms - 1;
  const does: DeviceAction[] = [
    { kind: 'extract fan', flow: 0.02, power: 15 },
    {
      kind: 'balanced ventilation',
      supplies: [{ room: 0, flow: 0.02 }],
      extracts: [{ room: last, flow: 0.015 }],
      heatRecovery: 0.7,
      moistureRecovery: 0.2,
      power: 30,
    },
    {
      kind: 'stove',
      batch: 1.5,
      interval: 3600,
      energy: 15e6,
      efficiency: 0.75,
      radiantShare: 0.5,
      lag: 1200,
      perRefuelling: [0, 5000],
      roomAir: 0.01,
    },
  ];
  return {
    ...home,
    openings: home.openings.map((o, i) => ({ ...o, azimuth: i % 2 === 0 ? 0 : 180 })),
    devices: does.map((d, k) => ({ name: `device ${k}`, room: k === 0 ? last : 0, does: d })),
  };
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

  test('with fans, a stove and wind through the home; and between rooms nothing is made', () => {
    for (const [rooms, seed] of [
      [2, 3],
      [4, 5],
      [7, 11],
    ] as const) {
      const home = draughtyHome(rooms, seed);
      const household = randomHousehold(home, seed);
      const run = { ...noAutomation(rooms), deviceControls: home.devices.map(runningByDay) };
      const { ledger } = simulate(
        {
          home,
          household,
          automation: run,
          weather,
          dt: 600,
          start: NEW_YEAR,
          hours: 720,
          spinUpDays: 2,
        },
        [],
      );
      const { energy, water, air, species } = ledger.residual;
      for (const residual of [energy, water, air, ...species]) {
        expect(residual).toBeLessThan(ROUNDING);
      }
      for (const terms of [ledger.energy, ledger.water, ...ledger.species]) {
        const throughput = total(terms.doorways.map(Math.abs));
        const net = total(terms.doorways);
        expect(throughput).toBeGreaterThan(0);
        // What leaves one room enters another: only the rounding of a month's sums is left.
        expect(Math.abs(net)).toBeLessThan(1e-12 * throughput);
        expect(total(terms.extracts)).not.toBe(0);
        expect(total(terms.draught)).not.toBe(0);
      }
    }
  });
});

const runningByDay = (_: unknown, device: number) =>
  runAlways(device, {
    by: {
      kind: 'clock',
      schedule: { base: 0, spells: [{ days: 127, from: 420, to: 1300, value: 0.8 }] },
    },
  });
