import { requireWithin } from '../../units/require-within.ts';

/**
 * Heat that a kilogram of liquid water takes to become vapour, and gives back when it condenses.
 *
 * @param temperature  of the water [°C], -40 to 100
 * @returns latent heat [J/kg]
 * @throws RangeError outside that range, or NaN
 *
 * @example latentHeat(20) / 3.6e6 // 0.682 kWh a litre
 *
 * Source: linear fit in common use; R. B. Stull, "An Introduction to Boundary Layer Meteorology", 1988,
 * page 641 (as the R package bigleaf prints it), has a slope of 2.370, a part in ten thousand away at
 * 25 °C. 0.1 % from 0 to 50 °C, beside steam tables 0.4 % at 100 °C.
 */
export function latentHeat(temperature: number): number {
  requireWithin(temperature, TEMPERATURES, 'latentHeat: temperature', '°C');
  return (2501 - 2.361 * temperature) * 1e3;
}

const TEMPERATURES = [-40, 100] as const;
