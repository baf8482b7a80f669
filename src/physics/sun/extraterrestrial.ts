import { cosineOf, sineOf } from '../../units/portable-math.ts';
import { requireWithin } from '../../units/require-within.ts';

/**
 * Irradiance outside the atmosphere on a plane facing the sun. [W/m2]
 *
 * @param dayOfYear  1 to 366
 * @param solarConstant  at the mean distance, 1361 unless told (Kopp and Lean 2011) [W/m2]
 * Accurate to 0.01 % of the distance's effect.
 * Source: Spencer 1971, as in Duffie and Beckman, equation 1.4.1b, and in the package pvlib,
 * irradiance.get_extra_radiation.
 */
export function extraterrestrialNormal(dayOfYear: number, solarConstant = SOLAR_CONSTANT): number {
  requireWithin(dayOfYear, [1, 367], 'extraterrestrialNormal: day of year', '');
  const b = (2 * Math.PI * (dayOfYear - 1)) / 365;
  const distance =
    1.00011 +
    0.034221 * cosineOf(b) +
    0.00128 * sineOf(b) +
    0.000719 * cosineOf(2 * b) +
    0.000077 * sineOf(2 * b);
  return solarConstant * distance;
}

const SOLAR_CONSTANT = 1361;
