import { DEGREE } from '../../physics/sun/angles.ts';
import { solarDeclination } from '../../physics/sun/solar-coordinates.ts';
import { solarHourAngle, sunsetHourAngle } from '../../physics/sun/sun-position.ts';
import { cosineOf, sineOf } from '../../units/portable-math.ts';

/**
 * Mean over a step of the cosine of the sun's zenith angle, night counting as 0. [-]
 *
 * This is the number that turns a mean direct irradiance into a mean on the horizontal and back: the
 * sine of the sun's height is integrated exactly between sunrise and sunset, with the declination of
 * mid-step.
 *
 * @param from  start of the step [s UTC]
 * @param step  length, at most a day [s]
 * @param latitude  north positive [deg]
 * @param longitude  east positive [deg]
 *
 * Source: Duffie and Beckman, Solar Engineering of Thermal Processes, section 1.10, integrated the same way.
 */
export function meanCosZenith(
  from: number,
  step: number,
  latitude: number,
  longitude: number,
): number {
  const middle = from + step / 2;
  const declination = solarDeclination(middle);
  const half = (step / 86_400) * 180; // turn of the earth in half a step [deg]
  const noonward = solarHourAngle(middle, longitude);
  const set = sunsetHourAngle(latitude, declination);
  const phi = latitude * DEGREE;
  const delta = declination * DEGREE;
  const level = sineOf(phi) * sineOf(delta);
  const swing = cosineOf(phi) * cosineOf(delta);
  let sum = 0;
  for (const noon of [-360, 0, 360]) {
    const a = Math.max(noonward - half, noon - set) * DEGREE;
    const b = Math.min(noonward + half, noon + set) * DEGREE;
    if (b > a) sum += level * (b - a) + swing * (sineOf(b) - sineOf(a));
  }
  return Math.max(0, sum / (2 * half * DEGREE));
}
