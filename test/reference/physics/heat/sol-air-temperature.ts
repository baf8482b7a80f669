/**
 * Outdoor temperature that would drive as much heat into a surface as air, sun and sky together do.
 *
 * @param airTemperature  [°C]
 * @param irradiance  on the surface [W/m2]
 * @param absorptance  of the surface for sunshine [-]
 * @param outerResistance  of the surface [m2 K/W]
 * @param skyLoss  net long-wave loss beyond that to surroundings at air temperature, see `skyLoss` [W/m2]
 * @returns [°C]
 * Source: Mackey and Wright 1944; ASHRAE Fundamentals, nonresidential cooling loads (from memory).
 */
export function solAirTemperature(
  airTemperature: number,
  irradiance: number,
  absorptance: number,
  outerResistance: number,
  skyLoss = 0,
): number {
  return airTemperature + outerResistance * (absorptance * irradiance - skyLoss);
}
