import type { Household, Person } from '../../control/household.ts';
import { JUST_LEFT } from '../../control/schedules/somebody-airs.ts';
import { capital } from '../../units/capital.ts';
import { MINUTES_PER_DAY } from '../../units/time-units.ts';
import { andList } from '../../units/word-list.ts';
import { DAYS, EVERY_DAY, GROUPS } from '../clock-words.ts';

/**
 * Of some days of the week, those on which nobody who lives in a home is usually there to open a window
 * at a minute of the day, nor has left within a quarter of an hour; Monday is 0. None in a home in which
 * nobody lives, whose windows are opened all the same.
 *
 * @param days    as bits; Monday is bit 0
 * @param minute  after local midnight
 */
export function daysAlone(
  { people }: Pick<Household, 'people'>,
  days: number,
  minute: number,
): number[] {
  const live = people.filter(({ guest }) => guest !== true);
  if (live.length === 0) return [];
  return DAYS.flatMap((_, day) => {
    if ((days & (1 << day)) === 0) return [];
    const there = (person: Person) =>
      isIn(person, day, minute) || isIn(person, day, minute - JUST_LEFT / 60);
    return live.some(there) ? [] : [day];
  });
}

/** Whether a person is usually at home at a minute of a day, in any month. */
function isIn({ schedule }: Person, day: number, minute: number): boolean {
  const before = (day + 6) % 7;
  return schedule.some(
    ({ days, from, to }) =>
      ((days & (1 << day)) !== 0 && from <= minute && minute < to) ||
      ((days & (1 << before)) !== 0 &&
        from <= minute + MINUTES_PER_DAY &&
        minute + MINUTES_PER_DAY < to),
  );
}

/** "on weekdays", "every day", "on Monday and Friday". @param list  days of the week, Monday is 0 */
export function daysInWords(list: readonly number[]): string {
  const bits = list.reduce((all, day) => all | (1 << day), 0);
  if (bits === EVERY_DAY) return 'every day';
  const group = Object.entries(GROUPS).find(([, of]) => of === bits);
  const names = list.map((day) => capital(DAYS[day]!));
  return `on ${group === undefined ? andList(names) : group[0]}`;
}
