import { moistureEffusivity } from '../physics/moisture/moisture-effusivity.ts';
import { requireWithin } from '../units/require-within.ts';
import type { Room } from './home.ts';

/**
 * Moisture buffer that stands for an area of material with a moisture buffer value: one store for the
 * day and, behind it, one for some weeks.
 *
 * A swing of vapour pressure of angular frequency w penetrates a thick material to a depth in
 * proportion to 1/sqrt(w). The surface store holds what the depth of a day holds, the deep store what
 * `deep` times that depth holds behind it; each sits in the middle of its layer, and the film of air
 * at the surface is put in series. For the same material the ratio of depths is the root of the ratio
 * of periods: 4.6 for three weeks. With the effusivity b the surface store holds sqrt(2) b / sqrt(w)
 * per pascal behind a conductance of sqrt(2) b sqrt(w), which is the depth model in other letters.
 *
 * Two stores answer swings of a thick material with 0.69 of the flow at 6 h, 0.93 at a day, 0.80 at a
 * week, 1.00 at three weeks and 0.80 at a quarter (gypsum-like, behind its film).
 *
 * @param value  moisture buffer value, 8 h at 75 % and 16 h at 33 % [g/(m2 %RH)]
 * @param deep   capacity of the deep store over that of the surface store, 0 for none [-]
 * @param area   [m2]
 * Source: effective moisture penetration depth with a surface and a deep layer, J. Woods, J. Winkler and
 * D. Christensen 2013 (from memory); put in terms of the buffer value here.
 */
export function bufferFromValue(value: number, deep: number, area: number): Room['buffer'] {
  requireWithin(value, [0, 20], 'bufferFromValue: moisture buffer value', 'g/(m2 %RH)');
  requireWithin(deep, [0, 50], 'bufferFromValue: deep over surface store', '-');
  requireWithin(area, [0, 1e5], 'bufferFromValue: area', 'm2');
  const effusivity = moistureEffusivity(value, TEST_SATURATION);
  const material = Math.SQRT2 * effusivity * Math.sqrt(DAILY);
  const conductance = material > 0 ? 1 / (1 / material + 1 / FILM) : 0;
  const capacity = ((Math.SQRT2 * effusivity) / Math.sqrt(DAILY)) * TEST_SATURATION * area;
  return {
    capacity,
    conductance: conductance * area,
    deep: {
      capacity: deep * capacity,
      conductance: deep > 0 ? (material / (1 + deep)) * area : 0,
    },
  };
}

/**
 * Surface of a square room that takes up moisture: floor, ceiling and walls. Furniture before them is
 * in the buffer value. [m2]
 *
 * @param floorArea  [m2]
 * @param height  [m]
 */
export function bufferingSurface(floorArea: number, height: number): number {
  requireWithin(floorArea, [0.5, 5000], 'bufferingSurface: floor area', 'm2');
  requireWithin(height, [1, 20], 'bufferingSurface: height', 'm');
  return 2 * floorArea + 4 * Math.sqrt(floorArea) * height;
}

const DAILY = (2 * Math.PI) / 86_400; // [rad/s]
const TEST_SATURATION = 2811; // of the test chamber at 23 °C [Pa]
const FILM = 2e-8; // [kg/(m2 s Pa)], 5e7 m2 s Pa/kg of the Nordic test method (from memory)
