import { powerOf } from '../../units/portable-math.ts';
import { requireWithin } from '../../units/require-within.ts';

/** What wind passes over before it gets somewhere. */
export type Terrain = 'city' | 'suburban' | 'open' | 'flat';

/**
 * Wind at one place and height over the wind that a weather station measures.
 *
 *     U/Umet = (delta_met/H_met)^a_met (H/delta)^a
 *
 * A profile for the lowest hundred metres above roofs and trees, means of an hour, level ground;
 * between buildings and at their foot it says little, which is what shielding is for.
 *
 * @param terrain  for half a kilometre and more upwind: `city` centres, `suburban` (also wooded), `open`
 *   country, or `flat` without obstacles, by large water
 * @param height  above the ground [m], 1 to 400
 * @param stationTerrain  the same of the station
 * @param stationHeight  of its anemometer [m], 1 to 200
 * @returns ratio [-]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example localWindRatio('suburban', 5, 'open', 10) // 0.615
 *
 * Source: ASHRAE Fundamentals (2017) ch. 24 eq. 4 and table 1.
 */
export function localWindRatio(
  terrain: Terrain,
  height: number,
  stationTerrain: Terrain,
  stationHeight: number,
): number {
  requireWithin(height, HEIGHTS, 'localWindRatio: height', 'm');
  requireWithin(stationHeight, STATION_HEIGHTS, 'localWindRatio: station height', 'm');
  const here = PROFILES[terrain];
  const there = PROFILES[stationTerrain];
  const aloft = powerOf(there.layer / stationHeight, there.exponent);
  return aloft * powerOf(height / here.layer, here.exponent);
}

/** Exponent [-] and thickness [m] of the layer that the ground slows. */
const PROFILES: Readonly<Record<Terrain, { readonly exponent: number; readonly layer: number }>> = {
  city: { exponent: 0.33, layer: 460 },
  suburban: { exponent: 0.22, layer: 370 },
  open: { exponent: 0.14, layer: 270 },
  flat: { exponent: 0.1, layer: 210 },
};
const HEIGHTS = [1, 400] as const;
const STATION_HEIGHTS = [1, 200] as const;
