import { powerOf, sineOf } from '../../units/portable-math.ts';
import { requireWithin } from '../../units/require-within.ts';
import { DEGREE } from './angles.ts';

/**
 * Global irradiance on the horizontal guessed from how much of the sky is clouded. [W/m2]
 *
 * @param cloud  share of the sky, 0 to 1 (oktas over 8)
 * @param elevation  of the sun [deg]; night gives 0
 * @throws RangeError outside these ranges
 * Source: Kasten and Czeplak 1980, Solar Energy 24, 177-189, from ten years of Hamburg:
 * (910 sin h - 30)(1 - 0.75 n^3.4). Models of smoke and traffic dispersion have 990 for 910 under the
 * same name. Single hours miss by half, months by a tenth.
 */
export function globalFromCloud(cloud: number, elevation: number): number {
  requireWithin(cloud, [0, 1], 'globalFromCloud: cloud', 'of the sky');
  requireWithin(elevation, [-90, 90], 'globalFromCloud: elevation', '°');
  const clear = Math.max(0, 910 * sineOf(elevation * DEGREE) - 30);
  return clear * (1 - 0.75 * powerOf(cloud, 3.4));
}
