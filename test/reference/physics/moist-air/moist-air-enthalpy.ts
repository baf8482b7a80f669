import {
  AIR_TEMPERATURES,
  DRY_AIR_HEAT,
  HUMIDITY_RATIOS,
  VAPOUR_HEAT,
} from '../../../../src/physics/moist-air/constants.ts';
import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Heat content of moist air for each kilogram of its dry air, counted from dry air and liquid water
 * at 0 °C.
 *
 * @param temperature  air temperature [°C], -100 to 200
 * @param humidityRatio  [kg water/kg dry air], 0 to 1
 * @returns enthalpy [J/kg dry air]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example moistAirEnthalpy(25, 0.01) // 50625
 *
 * Source: ASHRAE Fundamentals (2017) ch. 1 eq. 30. Beside the handbook's real-gas tables 0.03 % off
 * for dry air and up to 1 % near saturation at 50 °C.
 */
export function moistAirEnthalpy(temperature: number, humidityRatio: number): number {
  requireWithin(temperature, AIR_TEMPERATURES, 'moistAirEnthalpy: temperature', '°C');
  requireWithin(humidityRatio, HUMIDITY_RATIOS, 'moistAirEnthalpy: humidity ratio', 'kg/kg');
  return (
    DRY_AIR_HEAT * temperature + humidityRatio * (LATENT_HEAT_AT_ZERO + VAPOUR_HEAT * temperature)
  );
}

const LATENT_HEAT_AT_ZERO = 2_501_000; // J/kg
