import { requireWithin } from '../../units/require-within.ts';
import {
  AIR_PRESSURES,
  AIR_TEMPERATURES,
  DRY_AIR_GAS_CONSTANT,
  HUMIDITY_RATIOS,
  MOLAR_RATIO,
  ZERO_CELSIUS,
} from './constants.ts';

/**
 * Room that moist air takes for each kilogram of its dry air, as an ideal gas.
 *
 * @param temperature  air temperature [°C], -100 to 200
 * @param humidityRatio  [kg water/kg dry air], 0 to 1
 * @param pressure  air pressure [Pa], 20 000 to 180 000
 * @returns specific volume [m3/kg dry air]
 * @throws RangeError outside those ranges, or NaN
 *
 * Source: ASHRAE Fundamentals (2017) ch. 1 eq. 26.
 */
export function moistAirSpecificVolume(
  temperature: number,
  humidityRatio: number,
  pressure: number,
): number {
  requireWithin(temperature, AIR_TEMPERATURES, 'moistAirSpecificVolume: temperature', '°C');
  requireWithin(humidityRatio, HUMIDITY_RATIOS, 'moistAirSpecificVolume: humidity ratio', 'kg/kg');
  requireWithin(pressure, AIR_PRESSURES, 'moistAirSpecificVolume: air pressure', 'Pa');
  const kelvin = temperature + ZERO_CELSIUS;
  return (DRY_AIR_GAS_CONSTANT * kelvin * (1 + humidityRatio / MOLAR_RATIO)) / pressure;
}

/**
 * Dry air in a cubic metre of moist air: what turns a flow in m3/s into one that carries humidity.
 *
 * @param temperature  air temperature [°C], -100 to 200
 * @param humidityRatio  [kg water/kg dry air], 0 to 1
 * @param pressure  air pressure [Pa], 20 000 to 180 000
 * @returns density [kg dry air/m3]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example dryAirDensity(20, 0.007, 101325) // 1.191
 */
export function dryAirDensity(
  temperature: number,
  humidityRatio: number,
  pressure: number,
): number {
  return 1 / moistAirSpecificVolume(temperature, humidityRatio, pressure);
}
