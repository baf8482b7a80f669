import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Share of the heat that one kelvin less saves while heating goes on at all hours: dQ/Q = 1/(Ti - Te).
 *
 * So "6 % a degree" belongs to a winter mean difference of 16.7 K, and 10 % to a mild 10 K. Gains
 * are left out; they raise the share.
 *
 * @param meanDifference  mean indoor minus outdoor temperature over the heating season [K], 1 to 100
 * @returns share per kelvin [1/K]
 * @throws RangeError outside that range, or NaN
 */
export function setpointSaving(meanDifference: number): number {
  requireWithin(meanDifference, [1, 100], 'setpointSaving: mean difference', 'K');
  return 1 / meanDifference;
}
