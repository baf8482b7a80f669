import { requireWithin } from '../../units/require-within.ts';

/** Pressure across cracks by the flow through them: `dp = (a + b |q|) q`. */
export interface QuadraticLaw {
  /** Friction. [Pa s/m3] */
  readonly a: number;
  /** Inertia. [Pa s2/m6] */
  readonly b: number;
}

/**
 * Quadratic law that agrees with cracks at two pressures, 4 and 50 Pa unless told.
 *
 * It needs no power to evaluate and is a straight line near zero, as the flow in narrow cracks is. Set
 * beside a power law of exponent 0.65 it passes a twentieth more at 10 Pa, 8 % less at 2 Pa, a fifth
 * less at 1 Pa and a third less at 0.5 Pa; which of the two is nearer to a house at 1 Pa nobody
 * measures, because fans work above 10 Pa. Matched at 1 and 10 Pa it stays within 8 % of the power law
 * from 0.5 to 20 Pa, where wind and warmth drive a house.
 *
 * @param low     flow at the lower pressure [m3/s], above 0 and at most 1000
 * @param high    flow at the higher one [m3/s]: more than by inertia alone (the root of the ratio of the
 *   pressures), less than by friction alone (their ratio)
 * @param lowest  lower pressure [Pa], 0.01 to 1000
 * @param highest  higher pressure [Pa], 1.5 to 1000 times the lower one
 * @throws RangeError outside those ranges, or NaN
 *
 * @example quadraticLaw(0.107581, 0.555556) // { a: 24.50, b: 117.9 }
 *
 * Source: D. W. Etheridge, "Crack flow equations and scale effect", Building and Environment 12, 1977,
 * from memory; the two points are those of the leakage area (4 Pa) and of the blower door (50 Pa).
 */
export function quadraticLaw(
  low: number,
  high: number,
  lowest: number = 4,
  highest: number = 50,
): QuadraticLaw {
  requireWithin(low, FLOWS, 'quadraticLaw: flow at the lower pressure', 'm3/s');
  requireWithin(lowest, LOWEST, 'quadraticLaw: lower pressure', 'Pa');
  requireWithin(highest / lowest, RATIOS, 'quadraticLaw: ratio of the pressures', '');
  const ratio = highest / lowest;
  const between = [Math.sqrt(ratio) * (1 - ROUNDING), ratio * (1 + ROUNDING)] as const;
  requireWithin(high / low, between, 'quadraticLaw: ratio of the flows', '');
  const b = (highest / high - lowest / low) / (high - low);
  return { a: Math.max(0, lowest / low - b * low), b: Math.max(0, b) };
}

/**
 * Flow by a quadratic law, from the pressure across it.
 *
 *     q = 2 dp / (a + sqrt(a^2 + 4 b |dp|))
 *
 * Written so that nothing cancels near zero, and so that friction alone (b = 0) needs no case of its own.
 *
 * @param pressure  [Pa], -10 000 to 10 000; negative the other way
 * @returns flow, of the sign of the pressure [m3/s]
 * @throws RangeError outside that range, or NaN
 */
export function quadraticFlow({ a, b }: QuadraticLaw, pressure: number): number {
  requireWithin(pressure, PRESSURES, 'quadraticFlow: pressure', 'Pa');
  if (pressure === 0) return 0;
  return (2 * pressure) / (a + Math.sqrt(a * a + 4 * b * Math.abs(pressure)));
}

/**
 * Pressure that a flow needs by a quadratic law.
 *
 * @param flow  [m3/s], -1000 to 1000; negative the other way
 * @returns pressure, of the sign of the flow [Pa]
 * @throws RangeError outside that range, or NaN
 */
export function quadraticPressure({ a, b }: QuadraticLaw, flow: number): number {
  requireWithin(flow, BOTH_WAYS, 'quadraticPressure: flow', 'm3/s');
  return (a + b * Math.abs(flow)) * flow;
}

const FLOWS = [1e-12, 1000] as const;
const BOTH_WAYS = [-1000, 1000] as const;
const PRESSURES = [-10_000, 10_000] as const;
const LOWEST = [0.01, 1000] as const;
const RATIOS = [1.5, 1000] as const;
/** Of flows that come from a power law of a half or one. */
const ROUNDING = 1e-4;
