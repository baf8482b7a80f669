import { powerOf } from '../../units/portable-math.ts';
/**
 * Heat that a radiator gives at another water temperature than it is rated for.
 *
 *     P = P_rated (excess/rated excess)^n
 *
 * For the time loop: numbers only, nothing checked.
 *
 * @param ratedPower  output at the rated excess [W]
 * @param ratedExcess  mean water minus room temperature at rating [K], above 0: 50 by EN 442
 *   (75/65/20 °C)
 * @param exponent  n [-], 1 to 2; about 1.3 for radiators, 1.1 for floors, 1.4 for convectors
 * @param excess  mean water minus room temperature now [K], 0 or more
 * @returns output [W]
 *
 * @example outputAtExcess(1000, 50, 1.3, 30) // 515
 *
 * Source: characteristic equation of EN 442-2.
 */
export function outputAtExcess(
  ratedPower: number,
  ratedExcess: number,
  exponent: number,
  excess: number,
): number {
  return ratedPower * powerOf(excess / ratedExcess, exponent);
}
