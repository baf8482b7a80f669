import { requireWithin } from '../../units/require-within.ts';

/**
 * Moisture a thick material takes up and gives back per percent of a daily step of humidity (8 h high, 16 h low).
 *
 * @param effusivity  moisture effusivity [kg/(m2 Pa s^0.5)]
 * @param saturation  saturation pressure at the test temperature [Pa]
 * @returns ideal moisture buffer value [g/(m2 %RH)]
 * Source: Rode et al. 2005, Nordtest report BYG-DTU R-126: 0.00568 p_sat b sqrt(t) (from memory);
 * the factor follows from the Fourier series of the square wave.
 */
export function moistureBufferValue(effusivity: number, saturation: number): number {
  requireWithin(effusivity, [0, 1e-4], 'moistureBufferValue: effusivity', 'kg/(m2 Pa s^0.5)');
  requireWithin(saturation, SATURATION, 'moistureBufferValue: saturation pressure', 'Pa');
  return GRAMS * STEP_FACTOR * saturation * effusivity * Math.sqrt(DAY);
}

/** Inverse of `moistureBufferValue`: [g/(m2 %RH)] -> [kg/(m2 Pa s^0.5)]. */
export function moistureEffusivity(value: number, saturation: number): number {
  requireWithin(value, [0, 100], 'moistureEffusivity: moisture buffer value', 'g/(m2 %RH)');
  requireWithin(saturation, SATURATION, 'moistureEffusivity: saturation pressure', 'Pa');
  return value / (GRAMS * STEP_FACTOR * saturation * Math.sqrt(DAY));
}

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
  requireWithin(saturation, SATURATION, 'materialEffusivity: saturation pressure', 'Pa');
  return Math.sqrt((permeability * capacity) / saturation);
}

const STEP_FACTOR = 0.00568; // per percent of relative humidity
const DAY = 86_400; // [s]
const GRAMS = 1000;
const SATURATION = [1, 1e5] as const;
