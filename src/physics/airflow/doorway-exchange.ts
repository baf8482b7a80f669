import { ZERO_CELSIUS } from '../moist-air/constants.ts';
import { GRAVITY } from './gravity.ts';

/**
 * Air that passes an open door each way between two rooms of different warmth.
 *
 *     q = (Cd/3) W sqrt(g |dT|/T H^3),   Cd = 0.40 + 0.0045 |dT|
 *
 * The warm room's air leaves above, as much comes back below. The discharge coefficient grows with
 * the difference because mixing between the two streams matters less then. Ranges are not checked: it
 * runs in every step.
 *
 * @param width  of the doorway [m], 0 to 10
 * @param height  of the doorway [m], 0 to 10
 * @param temperatureDifference  between the rooms [K], -100 to 100; only its size counts
 * @param meanTemperature  of the rooms [°C], -60 to 120
 * @returns flow each way [m3/s]
 *
 * @example doorwayExchange(0.8, 2, 3, 20) // 0.0988
 *
 * Sources: W. G. Brown and K. R. Solvason, "Natural convection through rectangular openings in
 * partitions", Int. J. Heat Mass Transfer 5, 1962, from memory; the coefficient from D. Kiel and
 * D. Wilson as in ASHRAE Fundamentals (1997) p. 25.13 eq. 38.
 */
export function doorwayExchange(
  width: number,
  height: number,
  temperatureDifference: number,
  meanTemperature: number,
): number {
  const difference = Math.abs(temperatureDifference);
  const discharge = 0.4 + 0.0045 * difference;
  const lightness = difference / (meanTemperature + ZERO_CELSIUS);
  return (discharge / 3) * width * Math.sqrt(GRAVITY * lightness * height * height * height);
}
