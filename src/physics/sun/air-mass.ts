import { powerOf, sineOf } from '../../units/portable-math.ts';
import { DEGREE } from './angles.ts';

/**
 * Relative optical air mass: how much air the sun shines through, as a multiple of that overhead. [-]
 *
 * Where the sun is down it is as at the horizon, 37.9. For the time loop: a number in, a number out.
 *
 * @param elevation  of the sun, as seen through the air [deg]; refraction left out costs 0.2 % at 10°
 * Source: Kasten and Young 1989, Applied Optics 28, 4735-4738, equation 3, as in the
 * package pvlib, atmosphere.get_relative_airmass.
 */
export function relativeAirMass(elevation: number): number {
  const height = Math.max(0, elevation);
  return 1 / (sineOf(height * DEGREE) + 0.50572 * powerOf(height + 6.07995, -1.6364));
}
