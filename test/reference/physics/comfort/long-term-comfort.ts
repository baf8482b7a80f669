import { requireWithin } from '../../../../src/units/require-within.ts';

/** How long, and how far, temperatures were outside a range. */
export interface LongTermComfort {
  /** Method A: share of the time outside. [-] */
  readonly shareOutside: number;
  /** Method B, cold side: time weighted by the kelvins below. [K h] */
  readonly degreeHoursBelow: number;
  /** Method B, warm side. [K h] */
  readonly degreeHoursAbove: number;
}

/**
 * Long-term evaluation of operative temperatures against a range. The limits themselves are inside.
 *
 * @param temperatures  of the occupied time only, evenly spaced [°C]
 * @param low  [°C]
 * @param high  [°C]
 * @param step  that each temperature stands for [h]
 * @throws RangeError for no temperatures, a step that is not positive, or high below low
 * Source: ISO 7730:2005, annex H, methods A and B, the cold and the warm side kept apart.
 */
export function longTermComfort(
  temperatures: ArrayLike<number>,
  low: number,
  high: number,
  step = 1,
): LongTermComfort {
  requireWithin(temperatures.length, [1, 1e9], 'longTermComfort: number of temperatures', '');
  requireWithin(step, [1e-6, 1e6], 'longTermComfort: step', 'h');
  requireWithin(low, TEMPERATURES, 'longTermComfort: low', '°C');
  requireWithin(high, [low, TEMPERATURES[1]], 'longTermComfort: high', '°C');
  let outside = 0;
  let below = 0;
  let above = 0;
  for (let k = 0; k < temperatures.length; k++) {
    const t = temperatures[k]!;
    requireWithin(t, TEMPERATURES, 'longTermComfort: temperature', '°C');
    if (t < low || t > high) outside++;
    below += Math.max(0, low - t);
    above += Math.max(0, t - high);
  }
  return {
    shareOutside: outside / temperatures.length,
    degreeHoursBelow: below * step,
    degreeHoursAbove: above * step,
  };
}

const TEMPERATURES = [-100, 200] as const;
