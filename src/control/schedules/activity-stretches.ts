import type { Activity, Household } from '../household.ts';
import { takesPlaceOn } from './on-holiday.ts';
import { eachStretch, type StepRange, type Stretch, stretchBetween } from './step-range.ts';

/**
 * When an activity goes on by the clock within the range's steps, in order; what overlaps or adjoins
 * is one. Holidays keep it from happening; whether somebody is at home is not asked.
 *
 * @param runOn  for which it counts after each end [s]
 */
export function activityStretches(
  activity: Activity,
  runOn: number,
  household: Household,
  range: StepRange,
): Stretch[] {
  const united: { from: number; to: number }[] = [];
  const stretches: Stretch[] = [];
  for (const spell of activity.when) {
    eachStretch({ ...spell, to: spell.to + runOn / 60 }, range, (stretch, date) => {
      if (takesPlaceOn(date, activity, household)) stretches.push(stretch);
    });
  }
  stretches.sort((a, b) => a.from - b.from);
  for (const { from, to } of stretches) {
    const before = united.at(-1);
    if (before !== undefined && from <= before.to) before.to = Math.max(before.to, to);
    else united.push({ from, to });
  }
  return united.map(({ from, to }) => stretchBetween(from, to, range)!);
}
