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
 * Diffuse irradiance on a plane: from an even sky, and reflected by even ground. [W/m2]
 *
 * @param diffuseHorizontal  [W/m2]
 * @param globalHorizontal  [W/m2]
 * @param tilt  0 faces up, 90 is upright [deg]
 * @param albedo  reflectance of the ground [-]
 * Source: Liu and Jordan 1963; Duffie and Beckman, equation 2.15.1.
 */
export function diffuseOnPlane(
  diffuseHorizontal: number,
  globalHorizontal: number,
  tilt: number,
  albedo: number,
): number {
  const up = Math.cos(tilt * DEGREE);
  return (diffuseHorizontal * (1 + up) + globalHorizontal * albedo * (1 - up)) / 2;
}
