import { requireWithin } from '../../units/require-within.ts';
import { AIR_TEMPERATURES, TRIPLE_POINT, ZERO_CELSIUS } from './constants.ts';
import {
  lnPressureOverIce,
  lnPressureOverWater,
  lnSlopeOverIce,
  lnSlopeOverWater,
} from './saturation-curve.ts';

/**
 * Vapour pressure of air that holds all the water it can: over ice up to the triple point, over
 * liquid water above it.
 *
 * The curves part at the triple point, 0.01 °C, and not at freezing, 0 °C: there they meet (to
 * 6 parts in 10^9), so the whole is continuous and rising and its inverse, dewPoint, exists.
 *
 * @param temperature  air temperature [°C], -100 to 200
 * @returns saturation vapour pressure [Pa]
 * @throws RangeError outside that range, or NaN
 *
 * @example saturationPressure(20) // 2338.8
 *
 * Source: Hyland and Wexler 1983; see saturation-curve.ts.
 */
export function saturationPressure(temperature: number): number {
  requireWithin(temperature, AIR_TEMPERATURES, 'saturationPressure: temperature', '°C');
  const kelvin = temperature + ZERO_CELSIUS;
  return Math.exp(
    temperature <= TRIPLE_POINT ? lnPressureOverIce(kelvin) : lnPressureOverWater(kelvin),
  );
}

/**
 * Saturation vapour pressure over liquid water at every temperature, supercooled water included.
 *
 * Weather services report relative humidity this way also in frost (WMO-No. 8). Below 0 °C it is
 * the liquid curve extrapolated; beside Murphy and Koop (2005, eq. 10) it is 0.1 % off at -20 °C,
 * 0.25 % at -30 °C and 0.7 % at -40 °C.
 *
 * @param temperature  air temperature [°C], -100 to 200; of meaning from about -50
 * @returns saturation vapour pressure [Pa]
 * @throws RangeError outside that range, or NaN
 *
 * @example saturationPressureOverWater(-10) // 286.6, where ice has 259.9
 *
 * Source: Hyland and Wexler 1983; see saturation-curve.ts.
 */
export function saturationPressureOverWater(temperature: number): number {
  requireWithin(temperature, AIR_TEMPERATURES, 'saturationPressureOverWater: temperature', '°C');
  return Math.exp(lnPressureOverWater(temperature + ZERO_CELSIUS));
}

/**
 * How fast saturationPressure rises with temperature: its exact derivative.
 *
 * It steps down by an eighth at the triple point, because ice binds its molecules more firmly.
 *
 * @param temperature  air temperature [°C], -100 to 200
 * @returns slope [Pa/K]
 * @throws RangeError outside that range, or NaN
 */
export function saturationPressureSlope(temperature: number): number {
  const kelvin = temperature + ZERO_CELSIUS;
  const slope = temperature <= TRIPLE_POINT ? lnSlopeOverIce(kelvin) : lnSlopeOverWater(kelvin);
  return saturationPressure(temperature) * slope;
}
