import { requireWithin } from '../../units/require-within.ts';

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
