/**
 * Air that comes in through windows open on one side of a home, as much going out the same way.
 *
 *     q = A/2 sqrt(0.01 + 0.001 u^2 + 0.0035 H |dT|)
 *
 * Turbulence, wind and warmth, in that order. Measurements scatter by a third around it. Ranges are
 * not checked: it runs in every step.
 *
 * @param area  standing open [m2], 0 to 50
 * @param height  of the opening [m], 0 to 10
 * @param windSpeed  at the weather station, 10 m up [m/s], 0 to 100
 * @param temperatureDifference  indoors minus outdoors [K], -100 to 100; only its size counts
 * @returns flow [m3/s]
 *
 * @example singleSidedAiring(1, 1.2, 2, 20) * 3600 // 563 m3/h
 *
 * Source: W. de Gids and H. Phaff, "Ventilation rates and energy consumption due to open windows",
 * Air Infiltration Review 4(1), 1982; EN 16798-7:2017 has the same; constants from memory.
 */
export function singleSidedAiring(
  area: number,
  height: number,
  windSpeed: number,
  temperatureDifference: number,
): number {
  const wind = 0.001 * windSpeed * windSpeed;
  const warmth = 0.0035 * height * Math.abs(temperatureDifference);
  return (area / 2) * Math.sqrt(0.01 + wind + warmth);
}
