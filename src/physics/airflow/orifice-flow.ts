import { requireWithin } from '../../units/require-within.ts';

/**
 * Air through a hole by the pressure across it.
 *
 *     q = Cd A sqrt(2 |dp| / rho)
 *
 * @param area  of the hole [m2], 0 to 100
 * @param pressure  across it [Pa], -10 000 to 10 000; negative the other way
 * @param density  of the air that passes [kg/m3], 0.5 to 2
 * @param discharge  coefficient [-], 0 to 1; 0.6 for sharp edges
 * @returns flow, of the sign of the pressure [m3/s]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example orificeFlow(0.1, 1, 1.2) // 0.0775
 *
 * Source: Bernoulli; coefficient as in EN 16798-7:2017 and CIBSE AM10, from memory.
 */
export function orificeFlow(
  area: number,
  pressure: number,
  density: number,
  discharge: number = SHARP_EDGED,
): number {
  requireWithin(area, AREAS, 'orificeFlow: area', 'm2');
  requireWithin(pressure, PRESSURES, 'orificeFlow: pressure', 'Pa');
  requireWithin(density, DENSITIES, 'orificeFlow: density', 'kg/m3');
  requireWithin(discharge, COEFFICIENTS, 'orificeFlow: discharge coefficient', '');
  const speed = Math.sqrt((2 * Math.abs(pressure)) / density);
  return Math.sign(pressure) * discharge * area * speed;
}

/** Discharge coefficient of windows, doorways and other holes with sharp edges. [-] */
const SHARP_EDGED = 0.6;

const AREAS = [0, 100] as const;
const PRESSURES = [-10_000, 10_000] as const;
const DENSITIES = [0.5, 2] as const;
const COEFFICIENTS = [0, 1] as const;
