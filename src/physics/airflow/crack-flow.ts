import { powerOf } from '../../units/portable-math.ts';
import { requireWithin } from '../../units/require-within.ts';

/**
 * Air through cracks by the pressure across them.
 *
 *     q = C dp^n   for dp at least LAMINAR, and a straight line through zero below
 *
 * The line keeps the slope finite where nothing blows; it joins the power law without a step.
 *
 * @param coefficient  C, flow at 1 Pa [m3/(s Pa^n)], 0 to 1000
 * @param exponent  n: 0.5 for holes, 1 for pores, 0.65 for the cracks of houses [-]
 * @param pressure  across them [Pa], -10 000 to 10 000; negative the other way
 * @returns flow, of the sign of the pressure [m3/s]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example crackFlow(0.0437, 0.65, 4) // 0.1076
 *
 * Source: power law of ASHRAE Fundamentals (2017) ch. 16 and EN 16798-7:2017 (which has n 0.667), from memory.
 */
export function crackFlow(coefficient: number, exponent: number, pressure: number): number {
  requireWithin(coefficient, COEFFICIENTS, 'crackFlow: coefficient', 'm3/(s Pa^n)');
  requireWithin(exponent, EXPONENTS, 'crackFlow: exponent', '');
  requireWithin(pressure, PRESSURES, 'crackFlow: pressure', 'Pa');
  const size = Math.abs(pressure);
  if (size < LAMINAR) return coefficient * powerOf(LAMINAR, exponent - 1) * pressure;
  return Math.sign(pressure) * coefficient * powerOf(size, exponent);
}

/** Usual exponent of the cracks of a house; a home's own lies between 0.55 and 0.75. [-] */
export const CRACK_EXPONENT = 0.65;

const COEFFICIENTS = [0, 1000] as const;
const EXPONENTS = [0.5, 1] as const;
const PRESSURES = [-10_000, 10_000] as const;
const LAMINAR = 0.1; // Pa
