import type { DailyTemperatures } from './daily-temperatures.ts';

/** What counts: the cold below the base, or the warmth above it. */
export type DegreeDayKind = 'heating' | 'cooling';

/**
 * Degree-days by daily means: the sum over the days of how far the mean lies beyond the base. [K d]
 *
 * The mean is whatever `days.mean` holds; North American tables take (highest + lowest) / 2.
 *
 * @param base  temperature below which there is heating, or above which there is cooling [°C]
 */
export function degreeDaysByMean(
  days: Pick<DailyTemperatures, 'mean'>,
  base: number,
  kind: DegreeDayKind = 'heating',
): number {
  const sign = kind === 'heating' ? 1 : -1;
  let sum = 0;
  for (const mean of days.mean) sum += Math.max(0, sign * (base - mean));
  return sum;
}
