import { cosineOf } from '../../units/portable-math.ts';
import { requireWithin } from '../../units/require-within.ts';

/**
 * Long-wave loss of a surface to a sky colder than the air. [W/m2]
 *
 * The share of the sky that the surface sees, (1 + cos tilt)/2, times the radiative coefficient of
 * outer surfaces, times how much colder than the air the sky is: on average over day and night, clear
 * and overcast.
 *
 * @param tilt  from the horizontal, 0 faces up [deg], 0 to 180
 * @returns 45.5 for a level roof, 22.8 for a wall
 * Source: ISO 52016-1:2017 with the view factors and the 11 K for middle latitudes of
 * ISO 13790:2008, 11.3.5 (from memory).
 */
export function skyLoss(tilt: number): number {
  requireWithin(tilt, [0, 180], 'skyLoss: tilt', '°');
  const seen = 0.5 * (1 + cosineOf((tilt * Math.PI) / 180));
  return seen * OUTER_RADIATIVE * COLDER;
}

/** Long-wave coefficient of an outer surface. [W/(m2 K)] ISO 13789:2017, table 8 (from memory). */
const OUTER_RADIATIVE = 4.14;
/** Apparent sky temperature below that of the air. [K] */
const COLDER = 11;
