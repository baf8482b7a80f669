import { expect, test } from 'vitest';
import { createObservation } from '../../src/control/observations.ts';
import { layOutModel } from '../../src/engine/layout/model.ts';
import { ROOM } from '../../src/engine/layout/state-layout.ts';
import { observeRooms } from '../../src/engine/observe-rooms.ts';
import { createOutdoors } from '../../src/engine/outdoors/outdoors.ts';
import { saturationPressure } from '../../src/physics/moist-air/saturation-pressure.ts';
import { bareHome, bareRoom } from './homes.ts';

const SEA_LEVEL = 101_325;

/** Humidity ratio of air at a vapour pressure, by its definition. [kg/kg] */
const ratioAt = (pressure: number): number => (0.621945 * pressure) / (SEA_LEVEL - pressure);

/** What control sees of a room and of outdoors, each at a temperature and a vapour pressure. */
function seenAt(room: readonly [number, number], outside: readonly [number, number]) {
  const m = layOutModel(bareHome([bareRoom('room', 30)]), SEA_LEVEL, 600);
  m.rooms[ROOM.temperature] = room[0];
  m.rooms[ROOM.humidity] = ratioAt(room[1]);
  const outdoors = createOutdoors([], 1);
  outdoors.temperature[0] = outside[0];
  outdoors.humidityRatio[0] = ratioAt(outside[1]);
  const seen = createObservation(1, 0, 0);
  observeRooms(m, seen, outdoors, 0, saturationPressure);
  return seen;
}

// Tables of saturated air, printed in any handbook: 2339 Pa and 17.3 g/m3 at 20 °C, 872 Pa and
// 6.8 g/m3 at 5 °C.
const seen = seenAt([20, 0.5 * 2339], [5, 0.8 * 872]);

test('a room of 20 °C and 50 % holds 8.65 g of water in a cubic metre', () => {
  expect(seen.temperature[0]).toBe(20);
  expect(Math.abs(seen.relativeHumidity[0]! - 50)).toBeLessThan(0.05);
  expect(Math.abs(seen.absoluteHumidity[0]! - 17.3 / 2)).toBeLessThan(0.03); // print rounding
});

test('outdoor air of 5 °C and 80 % holds 5.44 g in a cubic metre', () => {
  expect(seen.outdoor[0]).toBe(5);
  expect(Math.abs(seen.outdoor[1]! - 80)).toBeLessThan(0.1);
  expect(Math.abs(seen.outdoor[2]! - 0.8 * 6.8)).toBeLessThan(0.05); // print rounding
});

test('water in a cubic metre is vapour pressure over gas constant and absolute temperature', () => {
  // Molar gas constant 8.314463 J/(mol K) (exact since 2019), water 18.01528 g/mol.
  const perKilogram = 8.314463 / 0.01801528;
  expect(seen.absoluteHumidity[0]! / 1000).toBeCloseTo((0.5 * 2339) / (perKilogram * 293.15), 6);
  expect(seen.outdoor[2]! / 1000).toBeCloseTo((0.8 * 872) / (perKilogram * 278.15), 6);
});
