import { requireWithin } from '../../units/require-within.ts';

/**
 * Outdoor temperature that would drive as much heat into a surface as air, sun and sky together do.
 *
 * For the time loop: numbers only, nothing checked.
 *
 * @param airTemperature  [°C]
 * @param irradiance  on the surface [W/m2]
 * @param absorptance  of the surface for sunshine [-]
 * @param outerResistance  of the surface [m2 K/W]
 * @param skyLoss  net long-wave loss beyond that to surroundings at air temperature, see `skyLoss` [W/m2]
 * @returns [°C]
 * Source: Mackey and Wright 1944; ASHRAE Fundamentals, nonresidential cooling loads (from memory).
 */
export function solAirTemperature(
  airTemperature: number,
  irradiance: number,
  absorptance: number,
  outerResistance: number,
  skyLoss = 0,
): number {
  return airTemperature + outerResistance * (absorptance * irradiance - skyLoss);
}

/**
 * Long-wave loss of a surface to a sky colder than the air. [W/m2]
 *
 * Uprights lose nothing, because warm ground makes up for cold sky; between, by the cosine.
 *
 * @param tilt  from the horizontal, 0 faces up [deg], 0 to 180
 * @param emittance  [-]
 * Source: ASHRAE Fundamentals: 63 W/m2 for black horizontal surfaces, 0 for upright ones (from memory).
 */
export function skyLoss(tilt: number, emittance = 0.9): number {
  requireWithin(tilt, [0, 180], 'skyLoss: tilt', '°');
  requireWithin(emittance, [0, 1], 'skyLoss: emittance', '');
  return emittance * CLEAR_SKY * Math.max(0, Math.cos((tilt * Math.PI) / 180));
}

const CLEAR_SKY = 63; // [W/m2]
