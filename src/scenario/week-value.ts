import type { Spell, WeekSchedule } from '../control/household.ts';
import { MINUTES_PER_DAY, MINUTES_PER_WEEK } from '../units/time-units.ts';
import { ALL_YEAR } from './month-words.ts';

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
export const valueAt = (schedule: WeekSchedule, { month, day, minute }: WeekMoment): number =>
  inWeek(within(1 << month, schedule), day, minute);

/**
 * A line's value at each minute of the week, from Monday midnight, with the spells of any of some months.
 *
 * @param months  as bits
 */
export function weekIn(months: number, schedule: WeekSchedule): Float64Array {
  const week = new Float64Array(MINUTES_PER_WEEK);
  for (const { day, from, to, value } of stretchesIn(months, schedule)) {
    week.fill(value, MINUTES_PER_DAY * day + from, MINUTES_PER_DAY * day + to);
  }
  return week;
}

/** The least value that a line has at any minute of the week, with the spells of any of some months. */
export const leastIn = (months: number, schedule: WeekSchedule): number =>
  Math.min(...stretchesIn(months, schedule).map(({ value }) => value));

/** Stretches of the days of a week over which a line has one value, one behind the other. [min] */
function stretchesIn(months: number, schedule: WeekSchedule) {
  const own = within(months, schedule);
  const turns = [...new Set([0, MINUTES_PER_DAY, ...turnsOf(own.spells)])].sort((a, b) => a - b);
  return Array.from({ length: 7 }, (_, day) =>
    turns.slice(1).map((to, k) => {
      const from = turns[k]!;
      return { day, from, to, value: inWeek(own, day, from) };
    }),
  ).flat();
}

/** Whether a spell holds in any of some months. */
const isIn = (months: number, { months: own = ALL_YEAR }: Spell): boolean => (own & months) !== 0;

/** A schedule with the spells of some months alone. */
const within = (months: number, { base, spells }: WeekSchedule): WeekSchedule => ({
  base,
  spells: spells.filter((spell) => isIn(months, spell)),
});

/** Value at a minute of a day, whatever month it is; of spells that overlap the later counts. */
function inWeek({ base, spells }: WeekSchedule, day: number, minute: number): number {
  let value = base;
  for (const spell of spells) {
    for (let back = 0; MINUTES_PER_DAY * back < spell.to; back++) {
      const began = (((day - back) % 7) + 7) % 7;
      const at = minute + MINUTES_PER_DAY * back;
      if ((spell.days & (1 << began)) !== 0 && spell.from <= at && at < spell.to) {
        value = spell.value;
      }
    }
  }
  return value;
}

/** Minutes after midnight at which spells begin and end. */
const turnsOf = (spells: readonly Spell[]): number[] =>
  spells.flatMap(({ from, to }) => [from % MINUTES_PER_DAY, to % MINUTES_PER_DAY]);

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
  const minutes = new Set([0, ...more, ...turnsOf(spells)]);
  for (let month = 0; month < 12; month++) {
    for (let day = 0; day < 7; day++) {
      for (const minute of minutes) yield { month, day, minute };
    }
  }
}
