import { cosineOf, sineOf } from '../../units/portable-math.ts';
import { DEGREE } from './angles.ts';

/**
 * Direct irradiance on a plane. [W/m2]
 *
 * Nothing arrives behind the plane or with the sun under the horizon. For the time loop: numbers only.
 *
 * @param directNormal  [W/m2]
 * @param sunElevation  [deg]
 * @param incidence  cosine, see `incidenceCosine`
 */
export function directOnPlane(
  directNormal: number,
  sunElevation: number,
  incidence: number,
): number {
  return sunElevation > 0 && incidence > 0 ? directNormal * incidence : 0;
}

/**
 * Diffuse irradiance on a plane: from the dome of the sky and its horizon, and reflected by even ground. [W/m2]
 *
 * @param dome  what an even dome sends on the horizontal; all diffuse light where the sky is even [W/m2]
 * @param globalHorizontal  [W/m2]
 * @param tilt  0 faces up, 90 is upright [deg]
 * @param albedo  reflectance of the ground [-]
 * @param horizon  what a band at the horizon sends on an upright plane, see `perezSky` [W/m2]; where it
 *   is so dark that it would take more than the dome gives, the sky gives nothing
 * Source: Liu and Jordan 1963; Duffie and Beckman, equation 2.15.1. Horizon: Perez and others 1990.
 */
export function diffuseOnPlane(
  dome: number,
  globalHorizontal: number,
  tilt: number,
  albedo: number,
  horizon = 0,
): number {
  const up = cosineOf(tilt * DEGREE);
  const sky = (dome * (1 + up)) / 2 + horizon * sineOf(tilt * DEGREE);
  return Math.max(0, sky) + (globalHorizontal * albedo * (1 - up)) / 2;
}
