import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Heating degree-days of a month from its mean temperature alone. [K d]
 *
 *     DD = N (Tb - Tm) / (1 - exp(-k (Tb - Tm)))
 *
 * @param base  Tb [°C]
 * @param mean  Tm, mean of the month [°C]
 * @param days  N
 * @param spread  k: how narrowly days scatter about the mean [1/K]; 0.71 is British
 * @throws RangeError where a number is none or `days` or `spread` not above 0
 * Source: Hitchin 1983, Building Services Engineering Research and Technology 4(1); k as in CIBSE TM41
 * (2006) (from memory).
 */
export function hitchinDegreeDays(base: number, mean: number, days: number, spread = 0.71): number {
  requireWithin(days, [1, 400], 'hitchinDegreeDays: days', 'd');
  requireWithin(spread, [0.01, 100], 'hitchinDegreeDays: spread', '1/K');
  const below = base - mean;
  requireWithin(below, [-200, 200], 'hitchinDegreeDays: base less mean', 'K');
  const x = spread * below;
  if (Math.abs(x) < 1e-9) return (days / spread) * (1 + x / 2); // the formula's limit at Tm = Tb
  return (days * below) / -Math.expm1(-x);
}
