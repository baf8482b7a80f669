import { requireWithin } from '../../units/require-within.ts';

/**
 * What a source that dries out gives off, as a mean over a while: fresh paint, glue, new furniture.
 *
 *     amount (exp(-from/tau) - exp(-to/tau))/(to - from)
 *
 * First order: half of what is left goes in each 0.69 tau. All whiles together give the amount, no
 * more and no less. Paint has two of them side by side, one of days while it dries and one of
 * months from what it and the wall took up.
 *
 * @param amount  that it will ever give off [µg], 0 to 1e12
 * @param timeConstant  tau [s], 1 to 1e10
 * @param from  beginning of the while, counted from when it was applied [s]; nothing before 0
 * @param to  its end, later than `from` [s]
 * @returns emission [µg/s]
 * @throws RangeError outside those ranges, where `to` is not later than `from`, or NaN
 *
 * Source: closed form; that paints on plasterboard need two terms: L. E. Sparks and others,
 * Indoor Air 9(1), 1999, who saw 3 to 4 days on steel and over 200 days on plasterboard.
 */
export function decayingSource(
  amount: number,
  timeConstant: number,
  from: number,
  to: number,
): number {
  requireWithin(amount, AMOUNTS, 'decayingSource: amount', 'µg');
  requireWithin(timeConstant, TIME_CONSTANTS, 'decayingSource: time constant', 's');
  requireWithin(from, TIMES, 'decayingSource: from', 's');
  requireWithin(to, TIMES, 'decayingSource: to', 's');
  if (!(to > from)) {
    throw new RangeError(
      `decayingSource: a while must end after it begins, got ${from} to ${to} s`,
    );
  }
  if (to <= 0) return 0;
  const begin = Math.max(0, from);
  const given = -Math.expm1((begin - to) / timeConstant) * Math.exp(-begin / timeConstant);
  return (amount * given) / (to - from);
}

const AMOUNTS = [0, 1e12] as const;
const TIME_CONSTANTS = [1, 1e10] as const;
const TIMES = [-1e12, 1e12] as const;
