import { DEGREE } from '../../../../src/physics/sun/angles.ts';
import { extraterrestrialNormal } from '../../../../src/physics/sun/extraterrestrial.ts';
import { sunsetHourAngle } from '../../../../src/physics/sun/sun-position.ts';
import { requireWithin } from '../../../../src/units/require-within.ts';

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
  solarConstant?: number,
): number {
  requireWithin(latitude, [-90, 90], 'extraterrestrialDaily: latitude', '°');
  const set = sunsetHourAngle(latitude, declination) * DEGREE;
  const phi = latitude * DEGREE;
  const delta = declination * DEGREE;
  const turnOfSines =
    Math.cos(phi) * Math.cos(delta) * Math.sin(set) + set * Math.sin(phi) * Math.sin(delta);
  return (86_400 / Math.PI) * extraterrestrialNormal(dayOfYear, solarConstant) * turnOfSines;
}
