import { expect, test } from 'vitest';
import type { Cooler } from '../../../src/home/home.ts';
import { always, bareHome, bareRoom, quietHousehold } from '../homes.ts';
import { last, recordRun, runInput, total } from '../record-run.ts';
import { lastDays } from '../short-weather.ts';

const HOURS = 96;
const HOT = lastDays({ temperature: () => 34, humidityRatio: () => 0.014 }, 6);

/** A leaky room that a coil cools and dries; free, or with its air held at what somebody read. */
function cooled(
  setpoint: number,
  read: number | null,
  { power = 5000, radiantShare = 0, weather = HOT, mass = { capacity: 0, area: 0 } } = {},
) {
  const unit: Cooler = {
    ...{ name: 'unit', room: 0, source: 'split', power, exhaust: 0, radiantShare },
    ...{ eer: { outdoor: [0], value: [3] } },
    coil: { bypassFactor: 0.15, temperature: 10, airflow: 400 / 3600 },
  };
  const home = bareHome([bareRoom('room', 50, { furnishingFactor: 10, mass })], {
    leakage: { how: { by: 'rate', flow: 0.05 }, share: [1], ach50: null },
    cooling: [unit],
  });
  const household = quietHousehold(home, { cooling: [always(setpoint)] });
  const input = { ...runInput({ home, weather }, { household, hours: HOURS }), spinUpDays: 1 };
  const airTemperature = new Float64Array((HOURS * 3600) / input.dt).fill(read ?? 0);
  const { room, run } = recordRun(
    read === null ? input : { ...input, imposed: { room: { airTemperature } } },
  );
  return {
    sensible: last(room.cooling[0]!),
    humidityRatio: last(room.humidityRatio[0]!),
    surfaces: last(room.radiantTemperature[0]!),
    held: last(room.heldHeat[0]!),
    dried: total(run.ledger.water.cooling),
    residual: run.ledger.residual,
  };
}

test.each([
  ['its setpoint', 24],
  ['a setpoint that its thermostat misses by a kelvin and a half', 25.5],
])('a room held at what a log reads is cooled and dried as it was, at %s', (_, setpoint) => {
  const free = cooled(24, null);
  const held = cooled(setpoint, 24);
  expect(free.sensible).toBeGreaterThan(200);
  // The same equations for other unknowns, settled to some millionths in four days.
  expect(held.sensible / free.sensible).toBeCloseTo(1, 4);
  expect(held.humidityRatio / free.humidityRatio).toBeCloseTo(1, 4);
  expect(Math.abs(held.held)).toBeLessThan(1e-6 * free.sensible);
  expect(held.dried).toBeLessThan(-1);
});

test('what coolers cannot take out of a held room is told as what holding it takes', () => {
  const weak = cooled(24, 24, { power: 100 });
  const strong = cooled(24, 24);
  expect(weak.sensible).toBeLessThanOrEqual(100);
  expect(weak.sensible).toBeGreaterThan(10);
  expect(weak.held).toBeLessThan(-100);
  expect(weak.humidityRatio).toBeGreaterThan(strong.humidityRatio);
  expect(weak.residual.energy).toBeLessThan(1e-9);
  expect(weak.residual.water).toBeLessThan(1e-9);
});

test('a room held far below what it is cooled to is not cooled, nor one that is warm in itself', () => {
  const { sensible, dried, held } = cooled(24, 21);
  expect([sensible, dried]).toEqual([0, 0]);
  expect(held).toBeLessThan(-200);
});

test('a held room that loses heat is not cooled, though it is warmer than its setpoint', () => {
  const cold = lastDays({ temperature: () => 5 }, 6);
  const { sensible, held } = cooled(24, 26, { weather: cold });
  expect(sensible).toBe(0);
  // 0.05 m3/s of air warmed by 21 K, by its density and heat: some 1260 W
  expect(held).toBeGreaterThan(1100);
  expect(held).toBeLessThan(1400);
});

test('of a held room a cooler takes the same, whatever share of it would be radiant', () => {
  const mass = { capacity: 2e5, area: 40 };
  const all = cooled(24, 24, { mass });
  const half = cooled(24, 24, { mass, radiantShare: 0.5 });
  expect(half.sensible / all.sensible).toBeCloseTo(1, 6);
  expect(half.surfaces).toBeCloseTo(all.surfaces, 6);
  expect(Math.abs(half.held)).toBeLessThan(1e-6 * half.sensible);
  expect(half.residual.energy).toBeLessThan(1e-9);
});
