import { type LocalClock, toLocal } from '../../units/local-clock.ts';
import { rootMeanSquare } from '../statistics/misfit.ts';

/** What errors repeat at the same hour of the day, one a local hour: what nobody told of a household's habits. */
export type DailyHabit = Float64Array;

/** Residuals of a search, and the hours that they are looked at in. */
export interface Habitual {
  /** Of the last search, hourly from the log's start; NaN in gaps. */
  readonly residuals: Float64Array;
  /** Of the search that did not see the last quarter. */
  readonly before: Float64Array;
  readonly from: number;
  readonly split: number;
  readonly to: number;
}

/** A habit that helped in hours which the search had not seen, and what it leaves there and in all. */
export interface SeenHabit {
  /** All 0 where none helped. */
  readonly habit: DailyHabit;
  /** Root mean square errors less the habit: in the hours fitted, and in the last quarter. [unit] */
  readonly rmse: number;
  readonly unseen: number;
}

/**
 * The mean error of each local hour of the day, used only where that of the first three quarters
 * brings the forecast of the last one nearer by a twentieth or more.
 *
 * @param start  instant of the log's first hour [s UTC]
 */
export function seenHabit(
  { residuals, before, from, split, to }: Habitual,
  start: number,
  clock: LocalClock,
): SeenHabit {
  const less = (errors: Float64Array, habit: DailyHabit, first: number, last: number): number =>
    rootMeanSquare(
      errors.subarray(first, last).map((e, k) => e - habit[hourOfDay(first + k, start, clock)]!),
    );
  const without = withoutHabit({ residuals, before, from, split, to });
  const trial = dailyHabit(before, from, split, start, clock);
  const unseen = less(before, trial, split, to);
  if (!(unseen < HELPS * without.unseen)) return without;
  const habit = dailyHabit(residuals, from, to, start, clock);
  return { habit, rmse: less(residuals, habit, from, to), unseen };
}

/** Errors as they are, where no habit is looked for. */
export const withoutHabit = ({ residuals, before, from, split, to }: Habitual): SeenHabit => ({
  habit: new Float64Array(HOURS),
  rmse: rootMeanSquare(residuals.subarray(from, to)),
  unseen: rootMeanSquare(before.subarray(split, to)),
});

/** Means of residuals by local hour, drawn towards 0 as two more days without error would. */
export function dailyHabit(
  residuals: Float64Array,
  from: number,
  to: number,
  start: number,
  clock: LocalClock,
): DailyHabit {
  const sums = new Float64Array(HOURS);
  const counts = new Float64Array(HOURS);
  for (let k = from; k < to; k++) {
    if (Number.isNaN(residuals[k]!)) continue;
    const hour = hourOfDay(k, start, clock);
    sums[hour]! += residuals[k]!;
    counts[hour]!++;
  }
  return sums.map((sum, hour) => sum / (counts[hour]! + DRAWN));
}

/** Local hour of the day, 0 to 23, of hour k. */
export function hourOfDay(k: number, start: number, clock: LocalClock): number {
  return Math.floor(toLocal(clock, start + k * 3600) / 3600) % HOURS;
}

const HOURS = 24;
const DRAWN = 2;
const HELPS = 0.95;
