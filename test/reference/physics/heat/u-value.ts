import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Thermal transmittance of resistances in series, surfaces included.
 *
 * @param resistances  each at least 0 [m2 K/W], together above 0
 * @returns [W/(m2 K)]
 * @throws RangeError for a negative resistance, or none at all
 * Source: ISO 6946:2017, component of plane homogeneous layers.
 */
export function uValue(resistances: readonly number[]): number {
  let sum = 0;
  for (const resistance of resistances) {
    requireWithin(resistance, RESISTANCE, 'uValue: resistance', 'm2 K/W');
    sum += resistance;
  }
  requireWithin(sum, TOTAL, 'uValue: total resistance', 'm2 K/W');
  return 1 / sum;
}

const RESISTANCE = [0, 1000] as const;
const TOTAL = [1e-6, 10_000] as const;
