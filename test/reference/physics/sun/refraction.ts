import { DEGREE } from '../../../../src/physics/sun/angles.ts';
import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * How much higher the air lets the sun appear. [deg]
 *
 * @param elevation  true, without refraction [deg]; below -1 the sun is out of sight and 0 is returned
 * For 1010 hPa and 10 °C; to about 0.002° above the horizon.
 * Source: Saemundsson 1986 as in Meeus 1998, equation 16.4 (from memory).
 */
export function refraction(elevation: number): number {
  requireWithin(elevation, [-90, 90], 'refraction: elevation', '°');
  if (elevation < -1) return 0;
  const minutes = 1.02 / Math.tan((elevation + 10.3 / (elevation + 5.11)) * DEGREE);
  return Math.max(0, minutes / 60);
}
