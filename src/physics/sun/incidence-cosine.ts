import { cosineOf, sineOf } from '../../units/portable-math.ts';
import { DEGREE } from './angles.ts';

/**
 * Cosine of the angle between the sun and the normal of a plane; negative behind the plane.
 *
 * For the time loop: numbers only, nothing checked.
 *
 * @param elevation  of the sun [deg]
 * @param azimuth  of the sun, clockwise from north [deg]
 * @param tilt  of the plane from the horizontal, 0 faces up, 90 is upright [deg]
 * @param facing  where the plane looks, clockwise from north [deg]
 * Source: Duffie and Beckman, equation 1.6.3 (azimuths counted there from the equator).
 */
export function incidenceCosine(
  elevation: number,
  azimuth: number,
  tilt: number,
  facing: number,
): number {
  const height = elevation * DEGREE;
  const slope = tilt * DEGREE;
  return (
    sineOf(height) * cosineOf(slope) +
    cosineOf(height) * sineOf(slope) * cosineOf((azimuth - facing) * DEGREE)
  );
}
