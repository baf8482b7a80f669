import { cosineOf } from '../../units/portable-math.ts';
import { DEGREE } from './angles.ts';

/** Diffuse light by where in the sky it comes from. */
export interface SkyParts {
  /** From around the sun, as if it came with the direct sun, on a plane that faces it. [W/m2] */
  readonly circumsolar: number;
  /** From the even dome, on the horizontal. [W/m2] */
  readonly dome: number;
  /** From a band at the horizon, on an upright plane; below 0 where the horizon is darker. [W/m2] */
  readonly horizon: number;
}

/**
 * Diffuse light of an uneven sky, brighter around the sun and brighter or darker at the horizon.
 *
 * What a plane of slope b, whose normal is at an angle i from the sun, gets of it is
 *
 *     circumsolar max(0, cos i) + dome (1 + cos b)/2 + horizon sin b
 *
 * With the sun down, and without diffuse light, the sky is even. Light from around the sun is at most
 * all there is. On the horizontal the parts add up to the diffuse irradiance, but for light around a sun
 * less than 5° high, whose circumsolar brightness the model caps.
 *
 * @param diffuse  on the horizontal [W/m2]
 * @param directNormal  [W/m2]
 * @param elevation  of the sun [deg]
 * @param airMass  see `relativeAirMass` [-]
 * @param beyond  irradiance outside the atmosphere, facing the sun [W/m2]
 * Source: Perez, Ineichen, Seals, Michalsky and Stewart 1990, Solar Energy 44, 271-289, equation 9 with
 * the coefficients for all sites, table 6 (their numbers from memory).
 */
export function perezSky(
  diffuse: number,
  directNormal: number,
  elevation: number,
  airMass: number,
  beyond: number,
): SkyParts {
  if (diffuse <= 0 || elevation <= 0) return { circumsolar: 0, dome: diffuse, horizon: 0 };
  const zenith = (90 - elevation) * DEGREE;
  const offset = 1.041 * zenith * zenith * zenith;
  const clearness = ((diffuse + directNormal) / diffuse + offset) / (1 + offset);
  const brightness = (diffuse * airMass) / beyond;
  const [f11, f12, f13, f21, f22, f23] = rowOf(clearness);
  const around = Math.min(1, Math.max(0, f11 + f12 * brightness + f13 * zenith));
  const atHorizon = f21 + f22 * brightness + f23 * zenith;
  return {
    circumsolar: (diffuse * around) / Math.max(LEAST_HEIGHT, cosineOf(zenith)),
    dome: diffuse * (1 - around),
    horizon: diffuse * atHorizon,
  };
}

function rowOf(clearness: number): Row {
  let bin = 0;
  while (bin < CLEARER_FROM.length && clearness >= CLEARER_FROM[bin]!) bin++;
  return COEFFICIENTS[bin]!;
}

type Row = readonly [number, number, number, number, number, number];

/** Clearness at which each but the first row begins. */
const CLEARER_FROM = [1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2];

/** f11, f12, f13, f21, f22, f23, from overcast to clear. */
const COEFFICIENTS: readonly Row[] = [
  [-0.008, 0.588, -0.062, -0.06, 0.072, -0.022],
  [0.13, 0.683, -0.151, -0.019, 0.066, -0.029],
  [0.33, 0.487, -0.221, 0.055, -0.064, -0.026],
  [0.568, 0.187, -0.295, 0.109, -0.152, -0.014],
  [0.873, -0.392, -0.362, 0.226, -0.462, 0.001],
  [1.132, -1.237, -0.412, 0.288, -0.823, 0.056],
  [1.06, -1.6, -0.359, 0.264, -1.127, 0.131],
  [0.678, -0.327, -0.25, 0.156, -1.377, 0.251],
];

/** Sine of 5°. */
const LEAST_HEIGHT = cosineOf(85 * DEGREE);
