import type { Spell, WeekLine } from '../../control/household.ts';
import { EVERY_DAY, spellOf } from '../model/clock-fields.ts';

/** A line that never leaves one value. */
export const level = (base: number): WeekLine => ({ base, spells: [] });

/**
 * A line that during some spells is no higher than a value: a night setting on top of a programme
 * that may already be lower.
 */
export function capped(line: WeekLine, spells: readonly Spell[], most: number): WeekLine {
  if (line.spells.length === 0) {
    const value = Math.min(line.base, most);
    return { base: line.base, spells: spells.map((spell) => ({ ...spell, value })) };
  }
  const week = minutesOf(line);
  for (const minute of spells.flatMap(minutesIn)) week[minute] = Math.min(week[minute]!, most);
  return lineOf(week, line.base);
}

/** A line's value at each minute of the week, from Monday midnight. */
function minutesOf(line: WeekLine): Float64Array {
  const week = new Float64Array(WEEK).fill(line.base);
  for (const spell of line.spells) {
    for (const minute of minutesIn(spell)) week[minute] = spell.value;
  }
  return week;
}

function minutesIn({ days, from, to }: Spell): number[] {
  const minutes: number[] = [];
  for (let day = 0; day < 7; day++) {
    if (((days >> day) & 1) === 0) continue;
    for (let m = from; m < to; m++) minutes.push((day * DAY + m) % WEEK);
  }
  return minutes;
}

/** The line that takes these values; the same stretch on several days is one spell. */
function lineOf(week: Float64Array, base: number): WeekLine {
  const days = new Map<string, { from: number; to: number; value: number; days: number }>();
  for (let day = 0; day < 7; day++) {
    let from = 0;
    for (let m = 1; m <= DAY; m++) {
      const value = week[day * DAY + from]!;
      if (m < DAY && week[day * DAY + m] === value) continue;
      if (value !== base) {
        const key = `${from} ${m} ${value}`;
        const known = days.get(key);
        days.set(key, { from, to: m, value, days: (known?.days ?? 0) | (1 << day) });
      }
      from = m;
    }
  }
  return { base, spells: [...days.values()] };
}

/** All the time. */
export const always = (): Spell => spellOf(EVERY_DAY, 0, DAY);

const DAY = 1440;
const WEEK = 7 * DAY;
