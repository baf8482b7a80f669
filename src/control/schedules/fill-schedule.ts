import type { WeekSchedule } from '../household.ts';
import { type StepRange, type Stretch, shareOf, stretchesOf } from './step-range.ts';

/**
 * Values by the clock, step by step, lines side by side: `[s * lines + i]`. Each is a mean over its
 * step, except that an infinite one is never averaged.
 *
 * @param of  what is laid out of each value of the schedules
 */
export function fillSchedules(
  values: Float64Array,
  schedules: readonly WeekSchedule[],
  range: StepRange,
  of: (value: number) => number = itself,
): void {
  const across = schedules.length;
  for (let i = 0; i < across; i++) values[i] = of(schedules[i]!.base);
  repeatRow(values, across, range.steps);
  for (let i = 0; i < across; i++) {
    for (const spell of schedules[i]!.spells) {
      const value = of(spell.value);
      for (const stretch of stretchesOf(spell, range)) overlay(values, i, across, stretch, value);
    }
  }
}

/** Repeat the first row of a table in all that follow. */
function repeatRow(values: Float64Array, across: number, rows: number): void {
  for (let at = across; at < rows * across; at++) values[at] = values[at - across]!;
}

function overlay(
  values: Float64Array,
  i: number,
  across: number,
  stretch: Stretch,
  value: number,
): void {
  for (let s = stretch.first; s <= stretch.last; s++) {
    const at = s * across + i;
    values[at] = blend(values[at]!, value, shareOf(stretch, s));
  }
}

/** Mean of two settings; one that is infinite (off) cannot be averaged, so the longer one holds. */
function blend(before: number, value: number, share: number): number {
  if (share === 1) return value;
  if (Number.isFinite(before) && Number.isFinite(value)) return before + share * (value - before);
  return share >= 0.5 ? value : before;
}

function itself(value: number): number {
  return value;
}
