import { expect, test } from 'vitest';
import { layOutModel } from '../../../src/engine/layout/model.ts';
import { FILM, ROOM } from '../../../src/engine/layout/state-layout.ts';
import { giveLatentHeat, setFilms } from '../../../src/engine/water/films.ts';
import { humidityRatioFromRelativeHumidity } from '../../../src/physics/moist-air/humidity-ratio.ts';
import { saturationPressure } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { bareHome, bareRoom } from '../homes.ts';
import { element, pane } from '../worked-house.ts';

const DT = 600;
const FACTOR = 0.7;
const PRESSURE = 101_325;
const [PANE, CORNER] = [0, FILM.stride];

/** The engine's table of saturation pressures promises nine digits. */
function expectPressure(got: number, expected: number): void {
  expect(Math.abs(got - expected)).toBeLessThanOrEqual(1e-9 * expected);
}

/** A room with an outer wall and an upright pane of U 3; air at 20, radiant node at 18 °C. */
function model() {
  const m = layOutModel(
    bareHome([bareRoom('room', 40, { coldSpotFactor: FACTOR })], {
      elements: [element('wall', 0, 'wall', 30, 1)],
      panes: [{ ...pane('window', 0, 2, 3), tilt: 90 }],
    }),
    PRESSURE,
    DT,
  );
  m.rooms[ROOM.meanTemperature] = 20;
  m.heat.solution[0] = 18;
  return m;
}

test('a pane is as cold as room and sky make it', () => {
  const m = model();
  setFilms(m, 0);
  // 5.13 of its 1/0.13 W/(m2 K) see the radiant node; a wall's share of a sky 11 K colder is 22.77 W/m2.
  const seen = 20 - 5.13 * 0.13 * 2;
  const outdoors = -22.77 * 0.04;
  const glass = seen - 3 * 0.13 * (seen - outdoors);
  expectPressure(m.films.records[PANE + FILM.saturation]!, saturationPressure(glass));
});

test('a corner follows outdoors with a lag of twelve hours', () => {
  const m = model();
  const corner = (slow: number): number => saturationPressure(20 - (1 - FACTOR) * (20 - slow));
  setFilms(m, 0);
  expectPressure(m.films.records[CORNER + FILM.saturation]!, corner(0));
  setFilms(m, 10);
  const slow = (10 * DT) / (DT + 12 * 3600);
  expectPressure(m.films.records[CORNER + FILM.saturation]!, corner(slow));
});

test('of latent heat from saturated air so much is given at once as settles', () => {
  const m = model();
  const { rooms, elimination, matrix, flow, airCp, evaporation } = m;
  const own = elimination.diagonal[0]!;
  matrix[own] = 0.3;
  flow[own] = 0.02;
  rooms[ROOM.falling] = 1e-5;
  rooms[ROOM.freed] = 100;
  rooms[ROOM.mostHumidity] = humidityRatioFromRelativeHumidity(20, 100, PRESSURE);
  giveLatentHeat(m);
  // Slope of saturated humidity over temperature, by a difference.
  const at = (t: number): number => humidityRatioFromRelativeHumidity(t, 100, PRESSURE);
  const slope = (at(20.01) - at(19.99)) / 0.02;
  const heat = rooms[ROOM.capacityRate]! + airCp * 0.02;
  const share = 1 / (1 + (evaporation * 0.3 * slope) / heat);
  expect(rooms[ROOM.phase]! / (100 * share)).toBeCloseTo(1, 2);
  expect(rooms[ROOM.phase]! + rooms[ROOM.owed]!).toBeCloseTo(100, 10);
});
