import { requireWithin } from '../../units/require-within.ts';

/**
 * Pressure that wind puts on a roof in the open, over the wind's own (rho U2/2), whatever its direction.
 *
 * Both slopes together, below 15 m. Shelter is not in it but in the wind, as for walls: see
 * `shieldingRatio`.
 *
 * @param tilt  from the horizontal [deg], 0 to 90
 * @returns coefficient [-]
 * @throws RangeError outside that range, or NaN
 *
 * Source: EN 16798-7:2017, roofs in the open; from memory.
 */
export function roofPressureCoefficient(tilt: number): number {
  requireWithin(tilt, TILTS, 'roofPressureCoefficient: tilt', 'deg');
  if (tilt < 10) return -0.7;
  return tilt <= 30 ? -0.6 : -0.2;
}

const TILTS = [0, 90] as const;
