import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Wind through a home: in by windows on one side, through a doorway, out by windows on another.
 *
 *     q = Cd A u sqrt(dCp),  1/A^2 = 1/Ain^2 + 1/Aout^2 + 1/Adoor^2,  Cd = 0.61
 *
 * Three orifices in series. Warmth is left out: through-draught is stronger unless the air is
 * calm, and then singleSidedAiring holds; take the larger. In large openings the jet keeps part of
 * its speed from one to the next, so measured flows can be a third higher.
 *
 * @param windward  standing open on the side of higher pressure [m2], 0 to 100
 * @param leeward  standing open on the other sides [m2], 0 to 100
 * @param door  narrowest passage between them [m2], 0 or more; Infinity for one room
 * @param windSpeed  that the pressure coefficients belong to, as a rule at roof height [m/s], 0 to 100
 * @param pressureDifferenceCoefficient  of the two sides [-], 0 to 3; 0.2 to 0.6 where houses
 *   shelter each other, about 1 in the open
 * @returns flow [m3/s]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example crossFlow(1, 1, Infinity, 3, 0.4) // 0.82 m3/s
 *
 * Source: orifice flow as in CIBSE AM10 and EN 16798-7:2017; from memory.
 */
export function crossFlow(
  windward: number,
  leeward: number,
  door: number,
  windSpeed: number,
  pressureDifferenceCoefficient: number,
): number {
  requireWithin(windward, AREAS, 'crossFlow: windward area', 'm2');
  requireWithin(leeward, AREAS, 'crossFlow: leeward area', 'm2');
  requireWithin(door, PASSAGES, 'crossFlow: door area', 'm2');
  requireWithin(windSpeed, WIND_SPEEDS, 'crossFlow: wind speed', 'm/s');
  requireWithin(pressureDifferenceCoefficient, COEFFICIENTS, COEFFICIENT, '');
  if (windward === 0 || leeward === 0 || door === 0) return 0;
  const resistance = 1 / (windward * windward) + 1 / (leeward * leeward) + 1 / (door * door);
  return DISCHARGE * windSpeed * Math.sqrt(pressureDifferenceCoefficient / resistance);
}

const DISCHARGE = 0.61;
const AREAS = [0, 100] as const;
const PASSAGES = [0, Number.POSITIVE_INFINITY] as const;
const WIND_SPEEDS = [0, 100] as const;
const COEFFICIENTS = [0, 3] as const;
const COEFFICIENT = 'crossFlow: pressure difference coefficient';
