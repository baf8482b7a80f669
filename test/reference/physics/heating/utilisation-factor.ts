import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Share of free heat (sun, people, appliances) that takes the place of heating; the rest overheats.
 *
 *     eta = (1 - g^a)/(1 - g^(a+1)), and a/(a+1) at g = 1
 *
 * @param gainLossRatio  g: free heat over heat loss of a month or season [-], 0 to 1e6
 * @param exponent  a: 1 + time constant/15 h for monthly sums [-], 0.5 to 1000
 * @returns utilisation factor [-]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example utilisationFactor(0.5, 3) // 0.933
 *
 * Source: ISO 13790:2008 eqs. 53 to 55, now ISO 52016-1; from memory.
 */
export function utilisationFactor(gainLossRatio: number, exponent: number): number {
  requireWithin(gainLossRatio, RATIOS, 'utilisationFactor: gain/loss ratio', '');
  requireWithin(exponent, EXPONENTS, 'utilisationFactor: exponent', '');
  if (gainLossRatio === 0) return 1;
  const log = Math.log(gainLossRatio);
  // Above 1 the powers would overflow: divide both by the larger one.
  if (log > 0) {
    return Math.expm1(-exponent * log) / Math.expm1(-(exponent + 1) * log) / gainLossRatio;
  }
  if (log === 0) return exponent / (exponent + 1);
  return Math.expm1(exponent * log) / Math.expm1((exponent + 1) * log);
}

const RATIOS = [0, 1e6] as const;
const EXPONENTS = [0.5, 1000] as const;
