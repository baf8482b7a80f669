import { requireWithin } from '../../units/require-within.ts';
import { annuityFactor } from './annuity-factor.ts';

/**
 * What is gained by spending now and saving every year, in today's money.
 *
 * @param investment  spent today [money], 0 or more
 * @param yearlySaving  at the end of every year [money]; negative where it costs more
 * @param rate  discount rate a year [-], 0 to 1
 * @param years  that the saving lasts, 0 to Infinity
 * @returns net present value [money]; negative is a loss
 * @throws RangeError outside those ranges, or NaN
 *
 * @example netPresentValue(10_000, 2500, 0.08, 6) // 1557.20
 */
export function netPresentValue(
  investment: number,
  yearlySaving: number,
  rate: number,
  years: number,
): number {
  requireWithin(investment, INVESTMENTS, 'netPresentValue: investment', '');
  requireWithin(yearlySaving, SAVINGS, 'netPresentValue: yearly saving', '');
  return yearlySaving * annuityFactor(rate, years) - investment;
}

/**
 * Years until savings have paid back what was spent, without interest.
 *
 * @param investment  spent today [money], 0 or more
 * @param yearlySaving  [money]
 * @returns [years]; 0 where nothing was spent, Infinity where nothing is saved
 * @throws RangeError outside those ranges, or NaN
 *
 * @example simplePayback(5000, 350) // 14.29
 */
export function simplePayback(investment: number, yearlySaving: number): number {
  requireWithin(investment, INVESTMENTS, 'simplePayback: investment', '');
  requireWithin(yearlySaving, SAVINGS, 'simplePayback: yearly saving', '');
  if (investment === 0) return 0;
  return yearlySaving > 0 ? investment / yearlySaving : Number.POSITIVE_INFINITY;
}

const INVESTMENTS = [0, 1e12] as const;
const SAVINGS = [-1e12, 1e12] as const;
