import { cosineOf, sineOf } from '../../units/portable-math.ts';
import { requireWithin } from '../../units/require-within.ts';

/**
 * Pressure that wind puts on a wall of a low house, over the wind's own (rho U2/2), by the angle
 * between the wind and the wall's normal.
 *
 *     Cp = 0.6 ln(1.248 - 0.703 s - 1.175 sin2(A) + 0.131 sin3(2 A G) + 0.769 c + 0.07 G2 s2 + 0.717 c2)
 *
 * with s = sin(A/2), c = cos(A/2) and G = ln(width of this wall over that of its neighbour).
 *
 * A fit to many wind tunnels, averaged over the wall. It is taken, rather than a table, because it
 * changes smoothly as the wind turns, and so do the flows; European tables know only windward and
 * leeward (+0.5 and -0.7 in the open). Shelter is not in it but in the wind: see `shieldingRatio`.
 * The term with 0.131 is printed with either sign; plus lets wind along a long wall suck less than
 * along a short one, as a flow does that has come back to the wall. A square house has neither term.
 *
 * @param angle  from the outward normal to where the wind comes from [deg], -720 to 720
 * @param sideRatio  width of this wall over that of its neighbour [-], 0.25 to 4
 * @returns coefficient, positive where air is pressed in [-]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example wallPressureCoefficient(90) // -0.443
 *
 * Source: M. V. Swami and S. Chandra, "Procedures for calculating natural ventilation airflow rates in
 * buildings", FSEC-CR-163-86, 1987.
 */
export function wallPressureCoefficient(angle: number, sideRatio: number = 1): number {
  requireWithin(angle, ANGLES, 'wallPressureCoefficient: angle', 'deg');
  requireWithin(sideRatio, SIDE_RATIOS, 'wallPressureCoefficient: side ratio', '');
  const turn = (((angle % 360) + 360) % 360) * (Math.PI / 180);
  const a = Math.min(turn, 2 * Math.PI - turn);
  const g = Math.log(sideRatio);
  const [half, across, along] = [sineOf(a / 2), sineOf(a), cosineOf(a / 2)];
  const swing = sineOf(2 * a * g);
  const oblong = 0.131 * swing * swing * swing + 0.07 * g * g * half * half;
  const square = 1.248 - 0.703 * half - 1.175 * across * across;
  return 0.6 * Math.log(square + 0.769 * along + 0.717 * along * along + oblong);
}

const ANGLES = [-720, 720] as const;
const SIDE_RATIOS = [0.25, 4] as const;
