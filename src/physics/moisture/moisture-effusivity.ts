import { requireWithin } from '../../units/require-within.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';

/**
 * Moisture effusivity of a thick material from its moisture buffer value: what it takes up and gives
 * back per percent of a daily step of humidity (8 h high, 16 h low).
 *
 * @param value  ideal moisture buffer value [g/(m2 %RH)], 0 to 100
 * @param saturation  saturation pressure at the test temperature [Pa], 1 to 1e5
 * @returns moisture effusivity [kg/(m2 Pa s^0.5)]
 * @throws RangeError outside those ranges, or NaN
 * Source: Rode et al. 2005, Nordtest report BYG-DTU R-126: value = 0.00568 p_sat b sqrt(t) (from
 * memory); the factor follows from the Fourier series of the square wave.
 */
export function moistureEffusivity(value: number, saturation: number): number {
  requireWithin(value, [0, 100], 'moistureEffusivity: moisture buffer value', 'g/(m2 %RH)');
  requireWithin(saturation, [1, 1e5], 'moistureEffusivity: saturation pressure', 'Pa');
  return value / (GRAMS * STEP_FACTOR * saturation * Math.sqrt(SECONDS_PER_DAY));
}

const STEP_FACTOR = 0.00568; // per percent of relative humidity
const GRAMS = 1000;
