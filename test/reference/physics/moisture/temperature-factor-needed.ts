import { dewPoint } from '../../../../src/physics/moist-air/dew-point.ts';
import { requireWithin } from '../../../../src/units/require-within.ts';
import { temperatureFactor } from './temperature-factor.ts';

/**
 * The least temperature factor that keeps a surface below a critical humidity.
 *
 * @param vapourPressure  in the room [Pa]
 * @param indoor  [°C]
 * @param outdoor  [°C]
 * @param criticalHumidity  80 for mould, 100 for condensation [%]
 * @returns at most 0 where even a surface at outdoor temperature is safe; NaN where inside equals
 *   outside; above 1 where no surface can be safe [-]
 * Source: ISO 13788:2012, design temperature factor; 80 % from its clause on mould.
 */
export function temperatureFactorNeeded(
  vapourPressure: number,
  indoor: number,
  outdoor: number,
  criticalHumidity = MOULD,
): number {
  const surface = surfaceTemperatureNeeded(vapourPressure, criticalHumidity);
  return temperatureFactor(surface, indoor, outdoor);
}

/** The lowest surface temperature at which the humidity there stays under the critical one. [°C] */
export function surfaceTemperatureNeeded(vapourPressure: number, criticalHumidity = MOULD): number {
  requireWithin(criticalHumidity, [1, 100], 'surfaceTemperatureNeeded: critical humidity', '%');
  return dewPoint((100 * vapourPressure) / criticalHumidity);
}

const MOULD = 80; // [%]
