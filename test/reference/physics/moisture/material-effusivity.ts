import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Moisture effusivity of a material.
 *
 * @param permeability  vapour permeability [kg/(m s Pa)]
 * @param capacity  of water per volume for humidity from 0 to 1, slope of the sorption curve [kg/m3]
 * @param saturation  [Pa]
 * @returns [kg/(m2 Pa s^0.5)]
 */
export function materialEffusivity(
  permeability: number,
  capacity: number,
  saturation: number,
): number {
  requireWithin(permeability, [0, 2e-10], 'materialEffusivity: permeability', 'kg/(m s Pa)');
  requireWithin(capacity, [0, 2000], 'materialEffusivity: moisture capacity', 'kg/m3');
  requireWithin(saturation, [1, 1e5], 'materialEffusivity: saturation pressure', 'Pa');
  return Math.sqrt((permeability * capacity) / saturation);
}
