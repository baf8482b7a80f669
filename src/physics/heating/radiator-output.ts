import { requireWithin } from '../../units/require-within.ts';

/**
 * Heat that a radiator gives at another water temperature than it is rated for.
 *
 *     P = P_rated (excess/rated excess)^n
 *
 * @param ratedPower  output at the rated excess [W], 0 or more
 * @param ratedExcess  mean water minus room temperature at rating [K]: 50 by EN 442 (75/65/20 °C);
 *   0 for an emitter whose output does not depend on it, such as an electric heater
 * @param exponent  n [-], 1 to 2; about 1.3 for radiators, 1.1 for floors, 1.4 for convectors
 * @param excess  mean water minus room temperature now [K]; none or less gives no heat
 * @returns output [W]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example radiatorOutput(1000, 50, 1.3, 30) // 515
 *
 * Source: characteristic equation of EN 442-2.
 */
export function radiatorOutput(
  ratedPower: number,
  ratedExcess: number,
  exponent: number,
  excess: number,
): number {
  requireWithin(ratedPower, POWERS, 'radiatorOutput: rated power', 'W');
  requireWithin(ratedExcess, EXCESSES, 'radiatorOutput: rated excess', 'K');
  if (ratedExcess === 0) return ratedPower;
  requireWithin(exponent, EXPONENTS, 'radiatorOutput: exponent', '');
  requireWithin(excess, ANY_EXCESS, 'radiatorOutput: excess', 'K');
  return excess <= 0 ? 0 : outputAtExcess(ratedPower, ratedExcess, exponent, excess);
}

/**
 * radiatorOutput for the step loop: water warmer than the room, nothing checked.
 *
 * @param ratedPower  [W]
 * @param ratedExcess  [K], above 0
 * @param exponent  [-]
 * @param excess  [K], above 0
 * @returns output [W]
 */
export function outputAtExcess(
  ratedPower: number,
  ratedExcess: number,
  exponent: number,
  excess: number,
): number {
  return ratedPower * (excess / ratedExcess) ** exponent;
}

/**
 * How much warmer than the room a radiator's water is on average, as EN 442 means it.
 *
 * @param flow  temperature of the water coming in [°C], 0 to 110
 * @param back  temperature of the water leaving [°C], 0 to the flow's
 * @param room  [°C], -50 to 60
 * @returns mean excess temperature [K]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example radiatorExcess(75, 65, 20) // 50
 */
export function radiatorExcess(flow: number, back: number, room: number): number {
  requireWithin(flow, [0, 110], 'radiatorExcess: flow temperature', '°C');
  requireWithin(back, [0, flow], 'radiatorExcess: return temperature', '°C');
  requireWithin(room, [-50, 60], 'radiatorExcess: room temperature', '°C');
  return (flow + back) / 2 - room;
}

const POWERS = [0, 1e7] as const;
const EXCESSES = [0, 200] as const;
const EXPONENTS = [1, 2] as const;
const ANY_EXCESS = [-300, 300] as const;
