import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Depth at which a swing of one period has shrunk to 1/e, for heat or for moisture. [m]
 *
 * At three of these depths 5 % is left, half a period late.
 *
 * @param diffusivity  [m2/s]
 * @param period  [s]
 * @throws RangeError for numbers that are not positive
 * Source: periodic solution of the diffusion equation in a half-space, sqrt(D T / pi); Carslaw and
 * Jaeger 1959, section 2.6.
 */
export function penetrationDepth(diffusivity: number, period: number): number {
  requireWithin(diffusivity, [1e-18, 1], 'penetrationDepth: diffusivity', 'm2/s');
  requireWithin(period, [1, 1e12], 'penetrationDepth: period', 's');
  return Math.sqrt((diffusivity * period) / Math.PI);
}

/**
 * Moisture diffusivity of a material in the hygroscopic range. [m2/s]
 *
 * @param permeability  vapour permeability [kg/(m s Pa)]
 * @param capacity  slope of the sorption curve: water per volume from 0 to 100 % [kg/m3]
 * @param saturation  [Pa]
 */
export function moistureDiffusivity(
  permeability: number,
  capacity: number,
  saturation: number,
): number {
  requireWithin(permeability, [1e-16, 2e-10], 'moistureDiffusivity: permeability', 'kg/(m s Pa)');
  requireWithin(capacity, [0.01, 2000], 'moistureDiffusivity: moisture capacity', 'kg/m3');
  requireWithin(saturation, [1, 1e5], 'moistureDiffusivity: saturation pressure', 'Pa');
  return (permeability * saturation) / capacity;
}
