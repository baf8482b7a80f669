import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Time that heating at full power needs to bring a home up, taken as one heat capacity.
 *
 *     t = tau ln[(Tinf - T0)/(Tinf - Ts)]
 *
 * @param timeConstant  heat capacity over heat-loss coefficient [h], 0 to 1e5
 * @param start  temperature at the beginning [°C]
 * @param target  temperature to reach [°C]
 * @param reachable  temperature that full power would hold for ever [°C]
 * @returns time [h]; 0 when it is warm already, Infinity when full power does not suffice
 * @throws RangeError for temperatures outside -100 to 1000 °C, or NaN
 *
 * @example warmUpTime(20, 14, 20, 40) // 5.25
 *
 * Source: closed form.
 */
export function warmUpTime(
  timeConstant: number,
  start: number,
  target: number,
  reachable: number,
): number {
  requireWithin(timeConstant, [0, 1e5], 'warmUpTime: time constant', 'h');
  requireWithin(start, TEMPERATURES, 'warmUpTime: start', '°C');
  requireWithin(target, TEMPERATURES, 'warmUpTime: target', '°C');
  requireWithin(reachable, TEMPERATURES, 'warmUpTime: reachable temperature', '°C');
  if (start >= target) return 0;
  if (reachable <= target) return Number.POSITIVE_INFINITY;
  return timeConstant * Math.log((reachable - start) / (reachable - target));
}

/**
 * How long a home remembers: heat capacity over heat-loss coefficient.
 *
 * @param capacity  [J/K], 0 to 1e12
 * @param lossCoefficient  [W/K], above 0
 * @returns time constant [h]
 * @throws RangeError outside those ranges, or NaN
 */
export function timeConstant(capacity: number, lossCoefficient: number): number {
  requireWithin(capacity, [0, 1e12], 'timeConstant: capacity', 'J/K');
  requireWithin(lossCoefficient, [0.001, 1e6], 'timeConstant: loss coefficient', 'W/K');
  return capacity / lossCoefficient / 3600;
}

const TEMPERATURES = [-100, 1000] as const;
