import { requireWithin } from '../../units/require-within.ts';
import { AIR_TEMPERATURES, VAPOUR_GAS_CONSTANT, ZERO_CELSIUS } from './constants.ts';

/**
 * Water vapour in a cubic metre of air ("absolute humidity"), as an ideal gas.
 *
 * @param vapourPressure  partial pressure of water vapour [Pa], 0 to 200 000
 * @param temperature  air temperature [°C], -100 to 200
 * @returns vapour density [g/m3]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example vapourDensity(1169.4, 20) // 8.64: air of 20 °C and 50 %
 */
export function vapourDensity(vapourPressure: number, temperature: number): number {
  requireWithin(vapourPressure, VAPOUR_PRESSURES, 'vapourDensity: vapour pressure', 'Pa');
  requireWithin(temperature, AIR_TEMPERATURES, 'vapourDensity: temperature', '°C');
  return (1000 * vapourPressure) / (VAPOUR_GAS_CONSTANT * (temperature + ZERO_CELSIUS));
}

const VAPOUR_PRESSURES = [0, 200_000] as const;
