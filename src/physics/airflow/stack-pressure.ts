import { requireWithin } from '../../units/require-within.ts';
import { GRAVITY } from './gravity.ts';

/**
 * How much more the pressure indoors rises over that outdoors on the way up, by the weight of the air.
 *
 *     dp = (rho_out - rho_in) g h
 *
 * Each of the two is of one density from floor to ceiling; 0.043 Pa for each metre and kelvin in winter.
 *
 * @param outdoorDensity  [kg/m3], 0.5 to 2
 * @param indoorDensity  [kg/m3], 0.5 to 2
 * @param height  on the way up [m], -100 to 100
 * @returns pressure, positive where warm air pushes out above [Pa]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example stackPressure(1.292, 1.204, 5) // 4.32
 *
 * Source: hydrostatics, as in ASHRAE Fundamentals (2017) ch. 16.
 */
export function stackPressure(
  outdoorDensity: number,
  indoorDensity: number,
  height: number,
): number {
  requireWithin(outdoorDensity, DENSITIES, 'stackPressure: outdoor density', 'kg/m3');
  requireWithin(indoorDensity, DENSITIES, 'stackPressure: indoor density', 'kg/m3');
  requireWithin(height, HEIGHTS, 'stackPressure: height', 'm');
  return (outdoorDensity - indoorDensity) * GRAVITY * height;
}

const DENSITIES = [0.5, 2] as const;
const HEIGHTS = [-100, 100] as const;
