import { GRAVITY } from '../../../../src/physics/airflow/gravity.ts';
import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Stack factor of a home: what warmth does to its leaks, by where they are.
 *
 *     f_s = (1 + R/2)/3 (1 - X^2/(2 - R)^2)^(3/2)
 *
 * @param horizontalShare  R: leakage in floor and ceiling over all leakage [-], 0 to 1
 * @param imbalance  X: (ceiling - floor) leakage over all leakage [-], -R to R
 * @returns factor [-]; squared, times g H/T, it is the stack coefficient in (m/s)2/K
 * @throws RangeError outside those ranges, or NaN
 *
 * Source: M. H. Sherman and D. T. Grimsrud, "Infiltration-pressurization correlation: simplified
 * physical modeling", ASHRAE Trans. 86(2), 1980, from memory.
 */
export function stackFactor(horizontalShare: number, imbalance: number): number {
  requireWithin(horizontalShare, SHARES, 'stackFactor: share of floor and ceiling', '');
  requireWithin(imbalance, [-horizontalShare, horizontalShare], 'stackFactor: imbalance', '');
  const skew = imbalance / (2 - horizontalShare);
  return ((1 + horizontalShare / 2) / 3) * (1 - skew * skew) ** 1.5;
}

/**
 * Stack coefficient of leakageFlow for a home of a given height and spread of leaks.
 *
 * @param factor  f_s, from stackFactor [-], 0 to 0.5
 * @param height  ceiling of the top storey above the ground [m], 1 to 30
 * @param temperature  mean of indoors and outdoors [°C], -50 to 50
 * @returns stack coefficient [(L/s)2/(cm4 K)]
 * @throws RangeError outside those ranges, or NaN
 */
export function stackCoefficient(factor: number, height: number, temperature: number): number {
  requireWithin(factor, [0, 0.5], 'stackCoefficient: stack factor', '');
  requireWithin(height, HEIGHTS, 'stackCoefficient: height', 'm');
  requireWithin(temperature, TEMPERATURES, 'stackCoefficient: temperature', '°C');
  return (IN_CM4 * factor * factor * GRAVITY * height) / (temperature + 273.15);
}

/**
 * Wind factor of a home: what the weather station's wind does to its leaks.
 *
 *     f_w = C' (1 - R)^(1/3) [A (H/10)^B] / [A' (H'/10)^B']
 *
 * @param shielding  class 1 (none) to 5 (very heavy)
 * @param horizontalShare  R, as for stackFactor [-], 0 to 1
 * @param home  its height [m], 1 to 30, and terrain class, 1 (sea) to 5 (city centre)
 * @param station  the same of the weather station; 10 m on open flat land unless told
 * @returns factor [-]; squared it is the wind coefficient in (m/s)2/(m/s)2
 * @throws RangeError outside those ranges, for classes that are not whole, or NaN
 */
export function windFactor(
  shielding: number,
  horizontalShare: number,
  home: Stand,
  station: Stand = AIRFIELD,
): number {
  requireWithin(horizontalShare, SHARES, 'windFactor: share of floor and ceiling', '');
  const coefficient = SHIELDING[shielding - 1];
  if (coefficient === undefined) {
    throw new RangeError(`windFactor: shielding must be 1, 2, 3, 4 or 5, got ${shielding}`);
  }
  return (coefficient * Math.cbrt(1 - horizontalShare) * exposure(home)) / exposure(station);
}

/** Ratio of local to reference wind speed for a height and terrain class. [-] */
function exposure({ height, terrain }: Stand): number {
  requireWithin(height, HEIGHTS, 'windFactor: height', 'm');
  const row = TERRAIN[terrain - 1];
  if (row === undefined) {
    throw new RangeError(`windFactor: terrain must be 1, 2, 3, 4 or 5, got ${terrain}`);
  }
  return row[0] * (height / 10) ** row[1];
}

/** Height and terrain class of a place in the wind. */
export interface Stand {
  /** [m] */
  readonly height: number;
  /** 1 sea or desert, 2 open flat land, 3 rural with scattered trees, 4 suburb or wood, 5 city. */
  readonly terrain: number;
}

const SHARES = [0, 1] as const;
const HEIGHTS = [1, 30] as const;
const TEMPERATURES = [-50, 50] as const;
const IN_CM4 = 0.01; // (L/s)2/cm4 in one (m/s)2
const AIRFIELD: Stand = { height: 10, terrain: 2 };
const SHIELDING: readonly number[] = [0.324, 0.285, 0.24, 0.185, 0.102];
const TERRAIN: readonly (readonly [number, number])[] = [
  [1.3, 0.1],
  [1.0, 0.15],
  [0.85, 0.2],
  [0.67, 0.25],
  [0.47, 0.35],
];
