import { requireWithin } from '../../units/require-within.ts';
import { saturationPressure } from './saturation-pressure.ts';

/**
 * How full of water the air is: vapour pressure over that of saturated air at the same temperature.
 *
 * With respect to ice below 0.01 °C, unless told; a weather service's figure in frost is with
 * respect to water and needs saturationPressureOverWater. More than 100 is given as it is, not cut.
 *
 * @param vapourPressure  partial pressure of water vapour [Pa], 0 to 200 000
 * @param temperature  of the air, or of a surface that it touches [°C], -100 to 200
 * @param saturation  vapour pressure of saturated air at a temperature [Pa]; a table is quicker
 * @returns relative humidity [%]
 * @throws RangeError outside those ranges, or NaN
 */
export function relativeHumidity(
  vapourPressure: number,
  temperature: number,
  saturation: (temperature: number) => number = saturationPressure,
): number {
  requireWithin(vapourPressure, VAPOUR_PRESSURES, 'relativeHumidity: vapour pressure', 'Pa');
  return (100 * vapourPressure) / saturation(temperature);
}

/**
 * Partial pressure of the water vapour in air of a relative humidity: relativeHumidity inverted.
 *
 * @param temperature  air temperature [°C], -100 to 200
 * @param humidity  relative humidity [%], 0 to 100; below 0.01 °C with respect to ice
 * @returns vapour pressure [Pa]
 * @throws RangeError outside those ranges, or NaN
 */
export function vapourPressureFromRelativeHumidity(temperature: number, humidity: number): number {
  requireWithin(humidity, PERCENT, 'vapourPressureFromRelativeHumidity: relative humidity', '%');
  return (humidity / 100) * saturationPressure(temperature);
}

const VAPOUR_PRESSURES = [0, 200_000] as const;
const PERCENT = [0, 100] as const;
