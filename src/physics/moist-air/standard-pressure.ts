import { powerOf } from '../../units/portable-math.ts';
import { requireWithin } from '../../units/require-within.ts';

/**
 * Air pressure to expect at a height above the sea, where nobody has measured it.
 *
 * @param elevation  above sea level [m], -5000 to 11 000
 * @returns air pressure [Pa]
 * @throws RangeError outside that range, or NaN
 *
 * @example standardPressure(500) // 95461
 *
 * Source: standard atmosphere, ASHRAE Fundamentals (2017) ch. 1 eq. 3. Weather moves the true
 * pressure by up to 5 % either way.
 */
export function standardPressure(elevation: number): number {
  requireWithin(elevation, ELEVATIONS, 'standardPressure: elevation', 'm');
  return 101_325 * powerOf(1 - 2.25577e-5 * elevation, 5.2559);
}

const ELEVATIONS = [-5000, 11_000] as const;
