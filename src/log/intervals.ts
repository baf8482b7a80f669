import type { LoggedSeries } from './log.ts';
import { middleOf } from './middle-of.ts';

/** How the readings of a series follow each other. */
export interface Intervals {
  /** Time between each and the next. [s] */
  readonly apart: Float64Array;
  /** Time that most often lies between two: their median. [s] */
  readonly every: number;
  /** Whether most differ from that by more than a tenth of it, as no clock would have it. */
  readonly uneven: boolean;
  /** Whether readings come as things change and not by the clock: uneven, and many enough to tell. */
  readonly onChange: boolean;
}

export function intervalsOf({ times }: Pick<LoggedSeries, 'times'>): Intervals {
  const n = times.length;
  const apart = new Float64Array(Math.max(0, n - 1));
  for (let k = 1; k < n; k++) apart[k - 1] = times[k]! - times[k - 1]!;
  const every = middleOf(apart);
  const uneven = middleOf(apart.map((a) => Math.abs(a - every))) > every / 10;
  return { apart, every, uneven, onChange: uneven && n > 20 };
}
