import { requireWithin } from '../../units/require-within.ts';
import { crackFlow } from './crack-flow.ts';

/**
 * Effective leakage area: the hole, without contraction of its jet, that passes at 4 Pa what cracks pass.
 *
 *     A = C 4^(n - 1/2) / sqrt(2/rho)
 *
 * @param coefficient  C of the power law, flow at 1 Pa [m3/(s Pa^n)], 0 to 1000
 * @param exponent  n of the power law [-], 0.5 to 1
 * @returns area [m2]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example effectiveLeakageArea(0.04369, 0.65) // 0.0417
 *
 * Source: ASHRAE Fundamentals (2017) ch. 16, at its reference pressure of 4 Pa and air of 20 °C; from memory.
 */
export function effectiveLeakageArea(coefficient: number, exponent: number): number {
  return crackFlow(coefficient, exponent, REFERENCE_PRESSURE) / REFERENCE_SPEED;
}

/**
 * Coefficient C of the power law whose flow at 4 Pa is that of an effective leakage area.
 *
 * @param area  [m2], 0 to 100
 * @param exponent  n of the power law [-], 0.5 to 1
 * @returns flow at 1 Pa [m3/(s Pa^n)]
 * @throws RangeError outside those ranges, or NaN
 */
export function coefficientOfLeakageArea(area: number, exponent: number): number {
  requireWithin(area, AREAS, 'coefficientOfLeakageArea: area', 'm2');
  return (area * REFERENCE_SPEED) / crackFlow(1, exponent, REFERENCE_PRESSURE);
}

const AREAS = [0, 100] as const;
const REFERENCE_PRESSURE = 4; // Pa
/** What 4 Pa make of air of 20 °C and 101 325 Pa, by Bernoulli. [m/s] */
const REFERENCE_SPEED = Math.sqrt((2 * REFERENCE_PRESSURE) / 1.2041);
