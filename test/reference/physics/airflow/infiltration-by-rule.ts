import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * The rule of thumb: a year's mean infiltration is a twentieth of the blower-door result.
 *
 * @param ach50  air changes per hour at 50 Pa [1/h], 0 to 100
 * @returns mean infiltration [1/h]; single homes differ from it by a factor of two
 * @throws RangeError outside that range, or NaN
 *
 * Source: J. Kronvall and A. Persily 1982, as told by A. Meier, "Infiltration: Just ACH50 Divided by
 * 20?", Home Energy, Jan./Feb. 1994.
 */
export function infiltrationByAch50Over20(ach50: number): number {
  requireWithin(ach50, [0, 100], 'infiltrationByAch50Over20: ach50', '1/h');
  return ach50 / 20;
}
