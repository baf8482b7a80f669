import type { Spell, WeekSchedule } from '../../control/household.ts';
import { MINUTES_PER_DAY } from '../../units/time-units.ts';
import { ALL_YEAR } from '../month-words.ts';
import { leastIn, weekIn } from '../week-value.ts';

/** A line that never leaves one value. */
export const level = (base: number): WeekSchedule => ({ base, spells: [] });

/** A line that has one value during some spells and another at all other times. */
export const during = (spells: readonly Spell[], value = 1, base = 0): WeekSchedule => ({
  base,
  spells: spells.map((spell) => ({ ...spell, value })),
});

/**
 * A line that during some spells is no higher than a value: a night setting on top of a programme
 * that may already be lower.
 *
 * Months that differ in what happens are laid out each on their own; a spell that runs past the midnight
 * of their last day is cut there.
 */
export function capped(
  schedule: WeekSchedule,
  spells: readonly Spell[],
  most: number,
): WeekSchedule {
  if (schedule.spells.length === 0) {
    return during(spells, Math.min(schedule.base, most), schedule.base);
  }
  const alike = monthsAlike([...schedule.spells, ...spells]);
  return {
    base: schedule.base,
    spells: alike.flatMap((months) => cappedIn(months, schedule, spells, most)),
  };
}

/** Where one line is above another for the first time in a week, and both there; null for nowhere. */
export function firstAbove(
  one: WeekSchedule,
  other: WeekSchedule,
): { readonly minute: number; readonly one: number; readonly other: number } | null {
  for (const months of monthsAlike([...one.spells, ...other.spells])) {
    const [upper, lower] = [weekIn(months, one), weekIn(months, other)];
    const minute = upper.findIndex((value, m) => value > lower[m]!);
    if (minute >= 0) return { minute, one: upper[minute]!, other: lower[minute]! };
  }
  return null;
}

/** The lowest value that a line has at any minute, which is not that between its spells where they leave nothing. */
export const lowestOf = (schedule: WeekSchedule): number =>
  schedule.spells.length === 0
    ? schedule.base
    : Math.min(...monthsAlike(schedule.spells).map((months) => leastIn(months, schedule)));

/** Caps a schedule in a set of months that all have the same spells. */
function cappedIn(months: number, schedule: WeekSchedule, spells: readonly Spell[], most: number) {
  const week = weekIn(months, schedule);
  const held = weekIn(months, during(spells));
  for (let minute = 0; minute < week.length; minute++) {
    if (held[minute] === 1) week[minute] = Math.min(week[minute]!, most);
  }
  const seldom = months === ALL_YEAR ? {} : { months };
  return spellsOf(week, schedule.base).map((spell) => ({ ...spell, ...seldom }));
}

/** Months by the spells that they have, as bits. */
function monthsAlike(spells: readonly Spell[]): number[] {
  const bySpells = new Map<string, number>();
  for (let bit = 1; bit <= ALL_YEAR; bit <<= 1) {
    const has = spells.map(({ months = ALL_YEAR }) => ((months & bit) === 0 ? '-' : 'x')).join('');
    bySpells.set(has, (bySpells.get(has) ?? 0) | bit);
  }
  return [...bySpells.values()];
}

/** Spells that take these values; the same stretch on several days is one spell. */
function spellsOf(week: Float64Array, base: number): WeekSchedule['spells'] {
  const days = new Map<string, { from: number; to: number; value: number; days: number }>();
  for (let day = 0; day < 7; day++) {
    let from = 0;
    for (let m = 1; m <= MINUTES_PER_DAY; m++) {
      const value = week[day * MINUTES_PER_DAY + from]!;
      if (m < MINUTES_PER_DAY && week[day * MINUTES_PER_DAY + m] === value) continue;
      if (value !== base) {
        const key = `${from} ${m} ${value}`;
        const known = days.get(key);
        days.set(key, { from, to: m, value, days: (known?.days ?? 0) | (1 << day) });
      }
      from = m;
    }
  }
  return [...days.values()];
}
