import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ImposedSeries } from '../../../src/engine/imposed/imposed.ts';
import type { RunInput } from '../../../src/engine/run.ts';
import { simulate } from '../../../src/engine/simulate.ts';
import type { Home } from '../../../src/home/home.ts';
import { noAutomation } from '../../control/no-automation.ts';
import { bareHome, bareRoom, madeWeather, NEW_YEAR, quietHousehold, runAlways } from '../homes.ts';
import { lumpedRoom } from '../lumped-room.ts';
import { randomHome, randomHousehold, swingingWeather } from '../random-home.ts';
import { last, recordRun, runInput, total } from '../record-run.ts';

const weather = swingingWeather();

/** A random home in use, two days of it. */
function inUse(rooms: number, seed: number, more: Partial<RunInput> = {}): RunInput {
  const home = randomHome(rooms, seed);
  const household = randomHousehold(home, seed);
  return runInput({ home, weather }, { household, hours: 48, ...more });
}

const stepsOf = ({ hours, dt }: RunInput): number => (hours * 3600) / dt;
const series = (steps: number, at: (k: number) => number): Float64Array =>
  Float64Array.from({ length: steps }, (_, k) => at(k));
const CO2 = { name: 'co2', unit: 'ppm', outdoor: 400, penetration: 1 } as const;
const swing = (k: number): number => 18 + 3 * Math.sin(k / 20);

function expectAlike(a: readonly Float64Array[], b: readonly Float64Array[], digits: number): void {
  a.forEach((column, i) => {
    const off = column.reduce((most, x, k) => Math.max(most, Math.abs(x - b[i]![k]!)), 0);
    expect(off).toBeLessThan(10 ** -digits);
  });
}

describe('a held room', () => {
  // Both runs solve the same equations for different unknowns, so only rounding tells them apart:
  // 1e-9 K and 1e-12 kg/kg are far above it and far below anything else. Temperatures begin near the
  // rooms' own and rise gently: after a jump, flows of air are corrected once, from unlike guesses.
  test('needs the heat that gives the same run back as extra heat', () => {
    const input = { ...inUse(4, 5), household: quietHousehold(randomHome(4, 5)) };
    const airTemperature = series(stepsOf(input), (k) => 9.5 + 8 * Math.sin(k / 40));
    const held = recordRun({ ...input, imposed: { 'room 2': { airTemperature } } });
    const heat = held.room.heldHeat[1]!;
    expect(Math.max(...heat)).toBeGreaterThan(100);
    expect(Math.min(...heat)).toBeLessThan(-100);
    const given = recordRun({ ...input, imposed: { 'room 2': { heat } } });
    expectAlike(given.room.airTemperature, held.room.airTemperature, 9);
    expectAlike(given.room.radiantTemperature, held.room.radiantTemperature, 9);
    expect(total(held.run.ledger.energy.held)).toBeCloseTo(total(heat) * input.dt, 0);
    expect(total(given.run.ledger.energy.extra)).toBeCloseTo(total(heat) * input.dt, 0);
  });

  test('needs the vapour that gives the same run back as extra vapour', () => {
    const input = { ...inUse(4, 6), household: quietHousehold(randomHome(4, 6)) };
    const humidityRatio = series(stepsOf(input), (k) => 0.005 + 0.001 * Math.sin(k / 15));
    const held = recordRun({ ...input, imposed: { 'room 3': { humidityRatio } } });
    const vapour = held.room.heldVapour[2]!;
    expect(Math.min(...vapour)).toBeLessThan(0);
    const given = recordRun({ ...input, imposed: { 'room 3': { vapour } } });
    expectAlike(given.room.humidityRatio, held.room.humidityRatio, 12);
    expect(total(held.run.ledger.water.held)).toBeCloseTo(total(vapour) * input.dt, 9);
  });

  test('is at its readings at the end of each step', () => {
    // The trace has means; where readings stay the same, the mean is the reading.
    const input = inUse(3, 7);
    const steps = stepsOf(input);
    const imposed = {
      'room 1': {
        airTemperature: series(steps, () => 21),
        relativeHumidity: series(steps, () => 50),
      },
    };
    const { room } = recordRun({ ...input, imposed });
    expect(last(room.airTemperature[0]!)).toBeCloseTo(21, 9);
    expect(last(room.relativeHumidity[0]!)).toBeCloseTo(50, 6);
    // No emitter of the room is fed; what it needs is told instead.
    expect(last(room.heating[0]!)).toBe(0);
    expect(last(room.heldHeat[0]!)).toBeGreaterThan(0);
  });

  test('is never above saturation', () => {
    const input = inUse(1, 9);
    const humidityRatio = series(stepsOf(input), () => 0.15);
    const { room, run } = recordRun({ ...input, imposed: { 'room 1': { humidityRatio } } });
    expect(Math.max(...room.relativeHumidity[0]!)).toBeLessThan(100 + 1e-6);
    expect(run.ledger.residual.water).toBeLessThan(1e-9);
  });
});

describe('held and then released', () => {
  // One capacity C, one loss G: T(t) = To + (T0 - To) exp(-t/tau), from the definition. The step
  // is third order in dt/tau, 1/36 here: an error below (1/36)^4/24 a step.
  test('a room of one temperature cools along the exponential', () => {
    const home = { ...lumpedRoom(6), longWave: 0 };
    const rooms = { room: { airTemperature: 25 } };
    const heldStart = { until: NEW_YEAR + 6 * 3600, rooms };
    const input = runInput({ home, weather: madeWeather() }, { heldStart, spinUpDays: 1 });
    const { room } = recordRun(input);
    const air = room.airTemperature[0]!;
    for (let k = 0; k < 36; k++) expect(air[k]).toBeCloseTo(25, 9);
    const x = input.dt / (6 * 3600);
    for (let k = 36; k < air.length; k++) {
      const mean = (Math.exp(-(k - 36) * x) * (1 - Math.exp(-x))) / x;
      expect(air[k]).toBeCloseTo(5 + 20 * mean, 4);
    }
    expect(room.heldHeat[0]!.slice(36).every((heat) => heat === 0)).toBe(true);
    expect(room.heldHeat[0]![35]).toBeGreaterThan(0);
  });

  test('walls know the first reading from the spin-up, and humidity is held too', () => {
    const rooms = {
      'room 1': { airTemperature: series(72, () => 16), relativeHumidity: series(72, () => 70) },
    };
    const input = inUse(1, 3, { spinUpDays: 3 });
    const { room } = recordRun({ ...input, heldStart: { until: NEW_YEAR + 12 * 3600, rooms } });
    expect(room.airTemperature[0]![0]).toBeCloseTo(16, 9);
    expect(room.relativeHumidity[0]![0]).toBeCloseTo(70, 6);
    expect(room.heldVapour[0]![72]).toBe(0);
    expect(Math.abs(room.relativeHumidity[0]![80]! - 70)).toBeGreaterThan(0.01);
  });
});

describe('imposed air, windows and people', () => {
  const leaky: Partial<Home> = {
    species: [CO2],
    leakage: { how: { by: 'rate', flow: 0.05 }, share: [1], ach50: null },
  };

  test('a tracer decays along the exponential of the imposed air change', () => {
    // C(t) = Co + (C0 - Co) exp(-n t), from the definition; n 2/h in steps of 10 min is 1/3 a step,
    // with an error of at most (1/3)^4/24 of the fall in each.
    const home = bareHome([bareRoom('room', 50)], leaky);
    const one = { sensible: 0, vapour: 0, species: [10] };
    const schedule = [{ days: 127, from: 0, to: 60, room: 0, asleep: false }];
    const people = [{ name: 'one', schedule, awake: one, asleep: one }];
    const household = quietHousehold(home, { people });
    const imposed = { room: { airChange: series(36, () => 2) } };
    const input = runInput({ home, weather: madeWeather() }, { household, imposed, hours: 6 });
    const { species, infiltration, run } = recordRun(input);
    const level = species[0]![0]!;
    expect(level[6]! - 400).toBeGreaterThan(100);
    for (let k = 7; k < 36; k++) {
      const ratio = (level[k]! - 400) / (level[k - 1]! - 400);
      expect(Math.abs(ratio - Math.exp(-1 / 3))).toBeLessThan((1 / 3) ** 4 / 24);
    }
    expect(infiltration[0]).toBeCloseTo((2 * 50) / 3600, 12);
    expect(run.ledger.residual.air).toBeLessThan(1e-12);
    const flow = { room: { outdoorAir: series(36, () => (2 * 50) / 3600) } };
    expectAlike(recordRun({ ...input, imposed: flow }).species[0]!, species[0]!, 9);
  });

  test('windows stand open as imposed, whatever the household does', () => {
    const input = inUse(2, 4);
    const steps = stepsOf(input);
    const windows = series(steps, (k) => (k < 30 ? 0.5 : 0));
    const { room } = recordRun({ ...input, imposed: { 'room 1': { windows } } });
    expect(room.windowOpen[0]!.every((open, k) => open === (k < 30 ? 1 : 0))).toBe(true);
    expect(Math.max(...room.windowOpen[1]!)).toBeGreaterThan(0);
  });

  test('people imposed by number give what the household says, or what is given beside it', () => {
    const input = inUse(2, 4);
    const steps = stepsOf(input);
    const some: ImposedSeries = { people: series(steps, () => 2) };
    const seconds = steps * input.dt;
    const counted = recordRun({ ...input, imposed: { 'room 1': some, 'room 2': some } });
    expect(counted.room.occupants[0]![100]).toBe(2);
    expect(total(counted.run.ledger.energy.people)).toBeCloseTo(4 * 75 * seconds, 0);
    expect(total(counted.run.ledger.water.people)).toBeCloseTo(4 * 1.5e-5 * seconds, 6);
    expect(total(counted.run.ledger.species[0]!.people)).toBeCloseTo(4 * 5.5 * seconds, 0);
    const given: ImposedSeries = {
      ...some,
      peopleHeat: series(steps, () => 10),
      peopleSpecies: { co2: series(steps, () => 1) },
    };
    const { run } = recordRun({ ...input, imposed: { 'room 1': given, 'room 2': given } });
    expect(total(run.ledger.energy.people)).toBeCloseTo(20 * seconds, 0);
    expect(total(run.ledger.species[0]!.people)).toBeCloseTo(2 * seconds, 0);
  });
});

describe('presence as a sensor tells it', () => {
  // Two people of 75 W, 7.5 mg/s of water and 5 ppm m3/s each are in room 1 all day: awake, or asleep and giving
  // 50 W and 5 mg/s.
  const home = bareHome([bareRoom('room', 50)], { species: [CO2] });
  const body = (sensible: number) => ({ sensible, vapour: sensible * 1e-7, species: [5] });
  const heatWith = (presence: number, household: 'awake' | 'asleep' | 'out') => {
    const stay = { days: 127, from: 0, to: 1440, room: 0, asleep: household === 'asleep' };
    const schedule = household === 'out' ? [] : [stay];
    const person = { schedule, awake: body(75), asleep: body(50) };
    const people = ['one', 'other'].map((name) => ({ name, ...person }));
    const input = runInput(
      { home, weather: madeWeather() },
      { household: quietHousehold(home, { people }), hours: 1 },
    );
    const imposed = { room: { presence: series(stepsOf(input), () => presence) } };
    const { run, room } = recordRun({ ...input, imposed });
    const perSecond = (joule: number) => joule / 3600;
    return [
      room.occupants[0]![3],
      perSecond(total(run.ledger.energy.people)),
      perSecond(total(run.ledger.species[0]!.people)),
      1e6 * perSecond(total(run.ledger.water.people)),
      room.asleep[0]![3],
    ].map((x) => Math.round(x! * 1e6) / 1e6);
  };

  test('keeps as many as the household has, and one who is awake where it has nobody', () => {
    expect(heatWith(1, 'awake')).toEqual([2, 150, 10, 15, 0]);
    expect(heatWith(0.5, 'awake')).toEqual([1, 75, 5, 7.5, 0]);
    expect(heatWith(0, 'awake')).toEqual([0, 0, 0, 0, 0]);
    expect(heatWith(1, 'out')).toEqual([1, 75, 5, 7.5, 0]);
    expect(heatWith(0, 'out')).toEqual([0, 0, 0, 0, 0]);
  });

  test('does not send away who sleeps, and is not asked where it is unknown', () => {
    expect(heatWith(0, 'asleep')).toEqual([2, 100, 10, 10, 2]);
    expect(heatWith(1, 'asleep')).toEqual([2, 100, 10, 10, 2]);
    expect(heatWith(Number.NaN, 'awake')).toEqual([2, 150, 10, 15, 0]);
  });
});

describe('laws of imposed runs', () => {
  test('balances close, whatever is imposed on a random home', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: 1, max: 1e6 }),
        fc.constantFrom(300, 600, 1800, 3600),
        fc.integer({ min: 0, max: 127 }),
        (rooms, seed, dt, kinds) => {
          const input = inUse(rooms, seed, { dt, hours: 120, spinUpDays: 2 });
          const imposed = drawn(input, kinds);
          const { energy, water, air, species } = simulate({ ...input, imposed }, []).ledger
            .residual;
          for (const residual of [energy, water, air, ...species]) {
            expect(residual).toBeLessThan(1e-9);
          }
        },
      ),
      { numRuns: 25, seed: 11 },
    );
  });

  test('balances close over a release', () => {
    const input = inUse(3, 15, { spinUpDays: 2 });
    const room = { airTemperature: 14, relativeHumidity: 80 };
    const heldStart = { until: NEW_YEAR + 86_400, rooms: { 'room 1': room, 'room 3': room } };
    const { energy, water } = simulate({ ...input, heldStart }, []).ledger.residual;
    expect(energy).toBeLessThan(1e-9);
    expect(water).toBeLessThan(1e-9);
  });

  test('air balances where a fan draws past a room with an imposed air change', () => {
    const plain = inUse(2, 21);
    const { home } = plain;
    const fan = {
      name: 'fan',
      room: 1,
      does: { kind: 'extract fan', flow: 0.02, power: 15 },
    } as const;
    const automation = { ...noAutomation(2), deviceControls: [runAlways(0)] };
    const input = { ...plain, home: { ...home, devices: [fan] }, automation };
    const airChange = series(stepsOf(input), () => 0.5);
    const one = { ...input, imposed: { 'room 1': { airChange } } };
    const both = { ...input, imposed: { 'room 1': { airChange }, 'room 2': { airChange } } };
    for (const run of [one, both]) {
      const { residual, energy } = simulate(run, []).ledger;
      expect(Math.max(residual.energy, residual.water, residual.air)).toBeLessThan(1e-9);
      expect(total(energy.extracts)).toBeLessThan(0);
      expect(total(energy.openings.slice(0, 1))).toBe(0);
    }
  });

  test('series that impose nothing change no byte', () => {
    const input = inUse(3, 8);
    const plain = recordRun(input);
    expect(recordRun({ ...input, imposed: {} })).toEqual(plain);
    expect(recordRun({ ...input, imposed: { 'room 1': {} } })).toEqual(plain);
  });
});

/** Series of some kinds, in every second room. */
function drawn(input: RunInput, kinds: number): Record<string, ImposedSeries> {
  const steps = stepsOf(input);
  const all: ImposedSeries[] = [
    { airTemperature: series(steps, swing) },
    { relativeHumidity: series(steps, (k) => 55 + 30 * Math.sin(k / 9)) },
    { people: series(steps, (k) => k % 3) },
    { heat: series(steps, (k) => 300 * Math.sin(k / 7)) },
    { vapour: series(steps, (k) => 1e-5 * (k % 4)) },
    { windows: series(steps, (k) => (k % 10 === 0 ? 1 : 0)) },
    { airChange: series(steps, (k) => 0.2 + 0.1 * (k % 5)) },
  ];
  const chosen = all.filter(
    (_, q) => (kinds >> q) % 2 === 1 && !(q === 6 && (kinds >> 5) % 2 === 1),
  );
  const names = input.home.rooms.filter((_, i) => i % 2 === 0).map(({ name }) => name);
  return Object.fromEntries(names.map((name) => [name, Object.assign({}, ...chosen)]));
}
