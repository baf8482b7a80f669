/**
 * Temperature of a pane's inner face in steady state. [°C]
 *
 * For the time loop: numbers only, nothing checked. The answer hangs on the inner resistance: 0.13
 * is the convention, behind curtains and in corners it is more and the glass colder.
 *
 * @param uValue  of the glazing, surfaces included [W/(m2 K)]
 * @param innerResistance  [m2 K/W]
 * @param indoor  [°C]
 * @param outdoor  [°C]
 */
export function paneSurfaceTemperature(
  uValue: number,
  innerResistance: number,
  indoor: number,
  outdoor: number,
): number {
  return indoor - uValue * innerResistance * (indoor - outdoor);
}

/**
 * Outdoor temperature at which a pane first reaches a dew point. [°C]
 *
 * @param dewPoint  of the room's air [°C], below `indoor`
 */
export function outdoorAtFirstCondensation(
  uValue: number,
  innerResistance: number,
  indoor: number,
  dewPoint: number,
): number {
  return indoor - (indoor - dewPoint) / (uValue * innerResistance);
}
