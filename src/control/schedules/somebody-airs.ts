import { localDay } from '../../units/local-clock.ts';
import { startsOn } from '../../units/starts-on.ts';
import { MINUTES_PER_DAY, SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Household, OpeningSpell, Person } from '../household.ts';
import { drawDay, HINGE, isNight } from './irregular-days.ts';
import { allOnHoliday, onHoliday } from './on-holiday.ts';

/**
 * Whether windows that stand open by the clock from some time of a local day on are opened that day:
 * somebody who lives in the home is there then, or has left within a quarter of an hour. Days out, days
 * spent like a Sunday and holidays count; by how much a day is shifted does not, because the habit
 * shifts with it. A motor needs nobody; nor does a home in which nobody lives.
 *
 * @param streams  of its people, from `streamsOfPeople`
 */
export function somebodyAirs(
  household: Household,
  streams: Int32Array,
): (date: number, spell: OpeningSpell) => boolean {
  const live = household.people.flatMap((person, k) =>
    person.guest === true ? [] : [{ person, stream: streams[k]! }],
  );
  const known = new Map<number, boolean>();

  const isSomebodyIn = (local: number): boolean =>
    live.some(({ person, stream }) => isIn(person, stream, local));

  return (date, { from, byMotor = false }) => {
    if (byMotor || live.length === 0) return true;
    const local = date * SECONDS_PER_DAY + from * 60;
    const before = known.get(local);
    if (before !== undefined) return before;
    const airs =
      !allOnHoliday(household, date) && (isSomebodyIn(local) || isSomebodyIn(local - JUST_LEFT));
    known.set(local, airs);
    return airs;
  };
}

/** Whether a person is at home on the day as it is drawn, but not shifted. @param local  [s local] */
function isIn(person: Person, stream: number, local: number): boolean {
  if (onHoliday(person, localDay(local))) return false;
  const day = localDay(local - HINGE);
  const { out, spent } = drawDay(person.irregular, stream, day);
  return person.schedule.some((stay) => {
    if (out && !isNight(stay)) return false;
    const reach = Math.ceil(stay.to / MINUTES_PER_DAY);
    for (let away = -reach; away <= 1; away++) {
      const minute = (local - (day + away) * SECONDS_PER_DAY) / 60;
      const isThen = stay.from <= minute && minute < stay.to;
      if (isThen && startsOn(stay, day + away, spent + away)) return true;
    }
    return false;
  });
}

/** Who has left so little before has opened the windows on the way out. [s] */
export const JUST_LEFT = 15 * 60;
