import { requireWithin } from '../../units/require-within.ts';
import { AIR_PRESSURES, HUMIDITY_RATIOS, MOLAR_RATIO } from './constants.ts';
import { vapourPressureFromRelativeHumidity } from './relative-humidity.ts';

/**
 * Water carried by each kilogram of dry air, from the vapour pressure.
 *
 * @param vapourPressure  partial pressure of water vapour [Pa], 0 to below the air pressure
 * @param pressure  air pressure [Pa], 20 000 to 180 000
 * @returns humidity ratio [kg water/kg dry air]
 * @throws RangeError outside those ranges, or NaN
 *
 * Source: ASHRAE Fundamentals (2017) ch. 1 eq. 20.
 */
export function humidityRatioFromVapourPressure(vapourPressure: number, pressure: number): number {
  requireWithin(pressure, AIR_PRESSURES, 'humidityRatioFromVapourPressure: air pressure', 'Pa');
  if (!(vapourPressure >= 0 && vapourPressure < pressure)) {
    throw new RangeError(
      'humidityRatioFromVapourPressure: vapour pressure must be at least 0 Pa and below the air ' +
        `pressure of ${pressure} Pa, got ${vapourPressure} Pa`,
    );
  }
  return (MOLAR_RATIO * vapourPressure) / (pressure - vapourPressure);
}

/**
 * Partial pressure of the water vapour in air of a humidity ratio: humidityRatioFromVapourPressure
 * inverted.
 *
 * @param humidityRatio  [kg water/kg dry air], 0 to 1
 * @param pressure  air pressure [Pa], 20 000 to 180 000
 * @returns vapour pressure [Pa]
 * @throws RangeError outside those ranges, or NaN
 */
export function vapourPressureFromHumidityRatio(humidityRatio: number, pressure: number): number {
  requireWithin(humidityRatio, HUMIDITY_RATIOS, RATIO, 'kg/kg');
  requireWithin(pressure, AIR_PRESSURES, 'vapourPressureFromHumidityRatio: air pressure', 'Pa');
  return (pressure * humidityRatio) / (MOLAR_RATIO + humidityRatio);
}

/**
 * Water carried by each kilogram of dry air, from what a hygrometer shows.
 *
 * @param temperature  air temperature [°C], -100 to 200
 * @param relativeHumidity  [%], 0 to 100; below 0.01 °C with respect to ice
 * @param pressure  air pressure [Pa], 20 000 to 180 000
 * @returns humidity ratio [kg water/kg dry air]
 * @throws RangeError outside those ranges, at or above boiling, or NaN
 *
 * @example humidityRatioFromRelativeHumidity(20, 50, 101325) // 0.00726
 */
export function humidityRatioFromRelativeHumidity(
  temperature: number,
  relativeHumidity: number,
  pressure: number,
): number {
  return humidityRatioFromVapourPressure(
    vapourPressureFromRelativeHumidity(temperature, relativeHumidity),
    pressure,
  );
}

const RATIO = 'vapourPressureFromHumidityRatio: humidity ratio';
