import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Outdoor air that enters a home when fans and weather move it at once.
 *
 *     Q = Qbalanced + sqrt(Qunbalanced^2 + Qnatural^2)
 *
 * A fan that only extracts (or only supplies) shifts the pressure on every leak, so it takes the
 * place of part of the infiltration; a fan that does both in equal measure leaves the leaks alone.
 *
 * @param natural  infiltration without fans [m3/s], 0 to 1e4
 * @param balanced  the lesser of supply and extract [m3/s], 0 to 1e4
 * @param unbalanced  how far supply and extract differ [m3/s], 0 to 1e4
 * @returns outdoor air entering [m3/s]
 * @throws RangeError outside those ranges, or NaN
 *
 * Source: ASHRAE Standard 62.2-2010 and Fundamentals (2009) ch. 16, superposition in quadrature;
 * after M. H. Sherman 1992; from memory.
 */
export function combineUnbalanced(natural: number, balanced: number, unbalanced: number): number {
  requireWithin(natural, FLOWS, 'combineUnbalanced: natural flow', 'm3/s');
  requireWithin(balanced, FLOWS, 'combineUnbalanced: balanced flow', 'm3/s');
  requireWithin(unbalanced, FLOWS, 'combineUnbalanced: unbalanced flow', 'm3/s');
  return balanced + Math.sqrt(unbalanced * unbalanced + natural * natural);
}

const FLOWS = [0, 1e4] as const;
