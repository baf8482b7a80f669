import { requireWithin } from '../../units/require-within.ts';

/** Pressure across cracks by the flow through them: `dp = (a + b |q|) q`. */
export interface QuadraticLaw {
  /** Friction. [Pa s/m3] */
  readonly a: number;
  /** Inertia. [Pa s2/m6] */
  readonly b: number;
}

/** What passes at a pressure. */
export interface FlowAt {
  /** [Pa] */
  readonly pressure: number;
  /** [m3/s] */
  readonly flow: number;
}

/**
 * Quadratic law that agrees with cracks at two pressures.
 *
 * It needs no power to evaluate and is a straight line near zero, as the flow in narrow cracks is. Where
 * the two points lie decides what it is good for. Matched at 4 and 50 Pa, the points of leakage areas
 * and of blower doors, it passes a twentieth more than a power law of exponent 0.65 at 10 Pa, a fifth
 * less at 1 Pa and a third less at 0.5 Pa; matched at 1 and 10 Pa it stays within 8 % from 0.5 to
 * 20 Pa, where wind and warmth drive a house. Which is nearer to a house at 1 Pa nobody measures,
 * because fans work above 10 Pa.
 *
 * @param low   pressure from 0.001 to 10 000 Pa, flow from 1e-12 to 1000 m3/s
 * @param high  pressure 1.1 to 1000 times that, flow as much more as the pressure (friction alone), as
 *   its root (inertia alone), or between
 * @throws RangeError outside those ranges, or NaN
 *
 * @example quadraticLaw({ pressure: 4, flow: 0.1076 }, { pressure: 50, flow: 0.5556 })
 *
 * Source: D. W. Etheridge, "Crack flow equations and scale effect", Building and Environment 12, 1977,
 * from memory.
 */
export function quadraticLaw(low: FlowAt, high: FlowAt): QuadraticLaw {
  requireWithin(low.pressure, LOWEST, 'quadraticLaw: lower pressure', 'Pa');
  requireWithin(low.flow, FLOWS, 'quadraticLaw: flow at the lower pressure', 'm3/s');
  const times = high.pressure / low.pressure;
  requireWithin(times, TIMES, 'quadraticLaw: higher over lower pressure', '');
  const range = [Math.sqrt(times) * (1 - ROUNDING), times * (1 + ROUNDING)] as const;
  requireWithin(high.flow / low.flow, range, 'quadraticLaw: higher over lower flow', '');
  const [first, second] = [low.pressure / low.flow, high.pressure / high.flow];
  const b = Math.max(0, (second - first) / (high.flow - low.flow));
  return { a: Math.max(0, first - b * low.flow), b };
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

const FLOWS = [1e-12, 1000] as const;
const PRESSURES = [-10_000, 10_000] as const;
const LOWEST = [1e-3, 1e4] as const;
const TIMES = [1.1, 1000] as const;
/** Of flows that come from a power law of a half or one. */
const ROUNDING = 1e-9;
