import type { WeekSchedule } from '../household.ts';
import {
  eachStretch,
  goesOnInMiddle,
  type StepRange,
  type Stretch,
  shareOf,
} from './step-range.ts';

/**
 * Values by the clock, step by step, lines side by side: `[s * lines + i]`. Each is a mean over its
 * step, except that an infinite one (off) is never averaged: there what holds in the step's middle counts.
 *
 * @param of     what is laid out of each value of the schedules
 * @param begins whether a spell that starts on a local day takes place
 */
export function fillSchedules<S extends WeekSchedule>(
  values: Float64Array,
  schedules: readonly S[],
  range: StepRange,
  of: (value: number) => number = itself,
  begins: (date: number, spell: S['spells'][number]) => boolean = always,
): void {
  const across = schedules.length;
  for (let i = 0; i < across; i++) values[i] = of(schedules[i]!.base);
  repeatRow(values, across, range.steps);
  for (let i = 0; i < across; i++) {
    for (const spell of schedules[i]!.spells) {
      const value = of(spell.value);
      eachStretch(spell, range, (stretch, date) => {
        if (begins(date, spell)) overlay(values, i, across, stretch, value, range);
      });
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
  range: StepRange,
): void {
  for (let s = stretch.first; s <= stretch.last; s++) {
    const at = s * across + i;
    const before = values[at]!;
    if (Number.isFinite(before) && Number.isFinite(value)) {
      values[at] = blend(before, value, shareOf(stretch, s));
    } else if (goesOnInMiddle(stretch, s, range)) {
      values[at] = value;
    }
  }
}

/** Mean of two settings. */
function blend(before: number, value: number, share: number): number {
  return share === 1 ? value : before + share * (value - before);
}

const always = (): boolean => true;

function itself(value: number): number {
  return value;
}
