import { requireWithin } from '../../units/require-within.ts';
import { DEGREE } from './angles.ts';
import { sunsetHourAngle } from './sun-position.ts';

/**
 * Irradiance outside the atmosphere on a plane facing the sun. [W/m2]
 *
 * @param dayOfYear  1 to 366
 * @param solarConstant  at the mean distance, 1361 unless told (Kopp and Lean 2011) [W/m2]
 * Accurate to 0.01 % of the distance's effect.
 * Source: Spencer 1971, as in Duffie and Beckman, equation 1.4.1b (from memory).
 */
export function extraterrestrialNormal(dayOfYear: number, solarConstant = SOLAR_CONSTANT): number {
  requireWithin(dayOfYear, [1, 367], 'extraterrestrialNormal: day of year', '');
  const b = (2 * Math.PI * (dayOfYear - 1)) / 365;
  const distance =
    1.00011 +
    0.034221 * Math.cos(b) +
    0.00128 * Math.sin(b) +
    0.000719 * Math.cos(2 * b) +
    0.000077 * Math.sin(2 * b);
  return solarConstant * distance;
}

/**
 * Irradiation outside the atmosphere on the horizontal over a day. [J/m2]
 *
 * @param latitude  north positive [deg]
 * @param declination  of the sun that day [deg]
 * Source: Duffie and Beckman, equation 1.10.3.
 */
export function extraterrestrialDaily(
  dayOfYear: number,
  latitude: number,
  declination: number,
  solarConstant = SOLAR_CONSTANT,
): number {
  requireWithin(latitude, [-90, 90], 'extraterrestrialDaily: latitude', '°');
  const set = sunsetHourAngle(latitude, declination) * DEGREE;
  const phi = latitude * DEGREE;
  const delta = declination * DEGREE;
  const turnOfSines =
    Math.cos(phi) * Math.cos(delta) * Math.sin(set) + set * Math.sin(phi) * Math.sin(delta);
  return (86_400 / Math.PI) * extraterrestrialNormal(dayOfYear, solarConstant) * turnOfSines;
}

/**
 * Declination of a day, good to half a degree: the handbooks' one-liner for design sums. [deg]
 * Source: Cooper 1969, as in Duffie and Beckman, equation 1.6.1a.
 */
export function declinationOfDay(dayOfYear: number): number {
  requireWithin(dayOfYear, [1, 367], 'declinationOfDay: day of year', '');
  return 23.45 * Math.sin((2 * Math.PI * (284 + dayOfYear)) / 365);
}

const SOLAR_CONSTANT = 1361;
