import type { WeekSchedule } from '../household.ts';
import { eachStep, type StepRange } from './step-range.ts';

/**
 * Values by the clock, step by step, lines side by side: `[s * lines + i]`. Each is a mean over its
 * step, except that an infinite one is never averaged.
 */
export function fillSchedules(
  values: Float64Array,
  schedules: readonly WeekSchedule[],
  range: StepRange,
): void {
  const across = schedules.length;
  schedules.forEach((schedule, i) => {
    for (let s = 0; s < range.steps; s++) values[s * across + i] = schedule.base;
    for (const spell of schedule.spells) {
      eachStep(spell, range, (step, share) => {
        const at = step * across + i;
        values[at] = blend(values[at]!, spell.value, share);
      });
    }
  });
}

/** Mean of two settings; one that is infinite (off) cannot be averaged, so the longer one holds. */
function blend(before: number, value: number, share: number): number {
  if (share === 1) return value;
  if (Number.isFinite(before) && Number.isFinite(value)) return before + share * (value - before);
  return share >= 0.5 ? value : before;
}
