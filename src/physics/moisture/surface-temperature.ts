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
