import { requireWithin } from '../../units/require-within.ts';
import { DRY_AIR_HEAT, HUMIDITY_RATIOS, VAPOUR_HEAT } from './constants.ts';

/**
 * Heat capacity of moist air per kilogram of its dry air: how its enthalpy rises with temperature.
 *
 * @param humidityRatio  [kg water/kg dry air], 0 to 1
 * @returns heat capacity [J/(kg dry air K)]
 * @throws RangeError outside that range, or NaN
 */
export function moistAirHeatCapacity(humidityRatio: number): number {
  requireWithin(humidityRatio, HUMIDITY_RATIOS, 'moistAirHeatCapacity: humidity ratio', 'kg/kg');
  return DRY_AIR_HEAT + VAPOUR_HEAT * humidityRatio;
}
