import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Declination of a day, good to half a degree: the handbooks' one-liner for design sums. [deg]
 * Source: Cooper 1969, as in Duffie and Beckman, equation 1.6.1a.
 */
export function declinationOfDay(dayOfYear: number): number {
  requireWithin(dayOfYear, [1, 367], 'declinationOfDay: day of year', '');
  return 23.45 * Math.sin((2 * Math.PI * (284 + dayOfYear)) / 365);
}
