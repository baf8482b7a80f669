import { requireWithin } from '../../../../src/units/require-within.ts';

/** Category of expectation: I for the frail, II normal, III moderate. */
export type ComfortCategory = 'I' | 'II' | 'III';

/**
 * Operative temperatures that people accept in a home without cooling, in the warm season.
 *
 * @param runningMean  of outdoor days, 10 to 30 °C, see `runningMeanOutdoor`
 * @returns lowest, middle and highest [°C]
 * @throws RangeError outside 10 to 30 °C, where the standard makes no promise
 * Source: EN 16798-1:2019, annex B: 0.33 t + 18.8, I +2/-3, II +3/-4, III +4/-5 K, as in the package
 * pythermalcomfort, adaptive_en.
 */
export function adaptiveComfort(
  runningMean: number,
  category: ComfortCategory,
): { readonly low: number; readonly middle: number; readonly high: number } {
  requireWithin(runningMean, [10, 30], 'adaptiveComfort: running mean', '°C');
  const middle = 0.33 * runningMean + 18.8;
  const above = ABOVE[category];
  return { low: middle - above - 1, middle, high: middle + above };
}

/**
 * Running mean of outdoor daily means, of which each day counts 0.8 of the one after it. [°C]
 *
 * @param before  yesterday's running mean [°C]
 * @param dayMean  yesterday's mean [°C]
 * @param memory  0 to 1, 0.8 by the standard
 * Source: EN 16798-1:2019 (from memory).
 */
export function runningMeanOutdoor(before: number, dayMean: number, memory = 0.8): number {
  requireWithin(memory, [0, 1], 'runningMeanOutdoor: memory', '');
  return (1 - memory) * dayMean + memory * before;
}

const ABOVE: Readonly<Record<ComfortCategory, number>> = { I: 2, II: 3, III: 4 };
