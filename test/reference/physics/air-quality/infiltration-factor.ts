import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Share of the outdoor particles that is found indoors when nothing indoors makes any.
 *
 *     F = P a/(a + k)
 *
 * @param penetration  P: share that survives the way in through cracks [-], 0 to 1
 * @param airChanges  a: of outdoor air [1/h], 0 to 1000
 * @param deposition  k: settling on surfaces [1/h], 0 to 1000
 * @returns infiltration factor [-]; 0 without air change
 * @throws RangeError outside those ranges, or NaN
 *
 * @example infiltrationFactor(1, 0.5, 0.39) // 0.562
 *
 * Source: closed form of the well-mixed room; in use since the PTEAM study (H. Oezkaynak and others,
 * 1996), which found P = 1 and k = 0.39 1/h for PM2.5; from memory.
 */
export function infiltrationFactor(
  penetration: number,
  airChanges: number,
  deposition: number,
): number {
  requireWithin(penetration, [0, 1], 'infiltrationFactor: penetration', '');
  requireWithin(airChanges, RATES, 'infiltrationFactor: air changes', '1/h');
  requireWithin(deposition, RATES, 'infiltrationFactor: deposition', '1/h');
  return airChanges === 0 ? 0 : (penetration * airChanges) / (airChanges + deposition);
}

const RATES = [0, 1000] as const;
