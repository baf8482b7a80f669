import type { WeekSchedule } from '../../control/household.ts';

/** A moment of the year as schedules know it. */
export interface WeekMoment {
  /** January is 0. */
  readonly month: number;
  /** Monday is 0. */
  readonly day: number;
  /** After local midnight. [min] */
  readonly minute: number;
}

/** What a weekly schedule has at a moment, in the middle of a month. */
export function valueAt(
  { base, spells }: WeekSchedule,
  { month, day, minute }: WeekMoment,
): number {
  let value = base;
  for (const spell of spells) {
    if (spell.months !== undefined && (spell.months & (1 << month)) === 0) continue;
    for (let back = 0; DAY * back < spell.to; back++) {
      const began = (((day - back) % 7) + 7) % 7;
      const at = minute + DAY * back;
      if ((spell.days & (1 << began)) !== 0 && spell.from <= at && at < spell.to) {
        value = spell.value;
      }
    }
  }
  return value;
}

/**
 * Moments of a year at which any of some schedules may change, and so one of every state they have
 * together.
 *
 * @param more  other minutes after midnight at which something changes
 */
export function* momentsOf(
  schedules: readonly WeekSchedule[],
  more: readonly number[] = [],
): Generator<WeekMoment> {
  const spells = schedules.flatMap((schedule) => schedule.spells);
  const minutes = new Set([
    0,
    ...more,
    ...spells.flatMap(({ from, to }) => [from % DAY, to % DAY]),
  ]);
  for (let month = 0; month < 12; month++) {
    for (let day = 0; day < 7; day++) {
      for (const minute of minutes) yield { month, day, minute };
    }
  }
}

const DAY = 1440; // [min]
