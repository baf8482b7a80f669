import { saturationPressure } from '../moist-air/saturation-pressure.ts';

/**
 * Temperature of an inner surface from its temperature factor. [°C]
 *
 * @param factor  (surface - outdoors)/(room - outdoors), fRsi of ISO 13788 [-]
 * @param indoor  room temperature [°C]
 * @param outdoor  [°C]
 */
export function surfaceTemperature(factor: number, indoor: number, outdoor: number): number {
  return outdoor + factor * (indoor - outdoor);
}

/** The factor that a measured surface temperature betrays; NaN where inside equals outside. [-] */
export function temperatureFactor(surface: number, indoor: number, outdoor: number): number {
  return indoor === outdoor ? Number.NaN : (surface - outdoor) / (indoor - outdoor);
}

/**
 * Relative humidity of the air that touches a surface. Over 100 where water condenses. [%]
 *
 * @param vapourPressure  in the room [Pa]
 * @param surface  temperature of the surface [°C]
 */
export function surfaceRelativeHumidity(vapourPressure: number, surface: number): number {
  return (100 * vapourPressure) / saturationPressure(surface);
}
