import type { DailyRanges } from '../../measures/series/daily-ranges.ts';
import { SECONDS_PER_DAY } from '../../units/local-clock.ts';

/**
 * Means of seven days each from the daily means, at the middle of the seven. Days left over at the
 * end make a last mean of their own where there are four or more, or where there is nothing else.
 */
export function weeklyMeans({ mean, start }: DailyRanges): { t: number; v: number }[] {
  const weeks: { t: number; v: number }[] = [];
  for (let first = 0; first < mean.length; first += 7) {
    const days = mean.subarray(first, first + 7);
    if (days.length < 4 && weeks.length > 0) break;
    const sum = days.reduce((total, value) => total + value, 0);
    weeks.push({
      t: (start + (first + days.length / 2) * SECONDS_PER_DAY) * 1000,
      v: Math.round((100 * sum) / days.length) / 100,
    });
  }
  return weeks;
}
