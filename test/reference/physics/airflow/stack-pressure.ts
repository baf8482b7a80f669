import { GRAVITY } from '../../../../src/physics/airflow/gravity.ts';

/**
 * How much more the pressure indoors rises over that outdoors on the way up, by the weight of the air.
 *
 *     dp = (rho_out - rho_in) g h
 *
 * Each of the two is of one density from floor to ceiling; 0.043 Pa for each metre and kelvin in winter.
 *
 * @param outdoorDensity  [kg/m3]
 * @param indoorDensity  [kg/m3]
 * @param height  on the way up [m]
 * @returns pressure, positive where warm air pushes out above [Pa]
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
  return (outdoorDensity - indoorDensity) * GRAVITY * height;
}
