import { requireWithin } from '../../units/require-within.ts';
import { ZERO_CELSIUS } from '../moist-air/constants.ts';
import { GRAVITY } from './gravity.ts';

/**
 * Air that passes an open door each way between two rooms of different warmth.
 *
 *     q = (Cd/3) W sqrt(g |dT|/T H^3)
 *
 * The warm room's air leaves above, as much comes back below. The discharge coefficient grows with
 * the difference because mixing between the two streams matters less then.
 *
 * @param width  of the doorway [m], 0 to 10
 * @param height  of the doorway [m], 0 to 10
 * @param temperatureDifference  between the rooms [K], -100 to 100; only its size counts
 * @param meanTemperature  of the rooms [°C], -60 to 120
 * @param discharge  coefficient [-]; 0.40 + 0.0045 |dT| unless told
 * @returns flow each way [m3/s]
 * @throws RangeError outside those ranges, or NaN
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
  discharge: number = 0.4 + 0.0045 * Math.abs(temperatureDifference),
): number {
  requireWithin(width, LENGTHS, 'doorwayExchange: width', 'm');
  requireWithin(height, LENGTHS, 'doorwayExchange: height', 'm');
  requireWithin(temperatureDifference, DIFFERENCES, 'doorwayExchange: difference', 'K');
  requireWithin(meanTemperature, TEMPERATURES, 'doorwayExchange: mean temperature', '°C');
  requireWithin(discharge, COEFFICIENTS, 'doorwayExchange: discharge coefficient', '');
  return exchange(width, height, temperatureDifference, meanTemperature, discharge);
}

/** What doorwayExchange gives with its own discharge coefficient, for arguments that are known to be within range. [m3/s] */
export function uncheckedDoorwayExchange(
  width: number,
  height: number,
  temperatureDifference: number,
  meanTemperature: number,
): number {
  const discharge = 0.4 + 0.0045 * Math.abs(temperatureDifference);
  return exchange(width, height, temperatureDifference, meanTemperature, discharge);
}

function exchange(
  width: number,
  height: number,
  temperatureDifference: number,
  meanTemperature: number,
  discharge: number,
): number {
  const lightness = Math.abs(temperatureDifference) / (meanTemperature + ZERO_CELSIUS);
  return (discharge / 3) * width * Math.sqrt(GRAVITY * lightness * height * height * height);
}

const LENGTHS = [0, 10] as const;
const DIFFERENCES = [-100, 100] as const;
const TEMPERATURES = [-60, 120] as const;
const COEFFICIENTS = [0, 1] as const;
