import type { Household, Person } from '../control/household.ts';
import { JUST_LEFT } from '../control/schedules/somebody-airs.ts';
import type { Notice } from '../home/notices.ts';
import { capital } from '../units/capital.ts';
import { andList } from '../units/word-list.ts';
import type { Habit } from './assemble/usual-airing.ts';
import { USUAL } from './choices.ts';
import { DAYS, EVERY_DAY, GROUPS, timeOf } from './clock-words.ts';
import type { ScenarioData } from './model/scenario-model.ts';

/**
 * Habits of airing by the clock for which nobody who lives in the home is usually there, nor has left
 * within a quarter of an hour, so that the windows stay shut. It may be a motor that is meant.
 */
export function nobodyAirs(
  { household }: Pick<ScenarioData, 'household'>,
  { people }: Pick<Household, 'people'>,
): Notice[] {
  const live = people.filter(({ guest }) => guest !== true);
  if (live.length === 0) return [];
  return (household?.airing ?? []).flatMap((habit): Notice[] => {
    if (habit === USUAL || habit.by === 'motor') return [];
    const times = new Map<string, number[]>();
    for (const at of habit.at ?? []) {
      const alone = daysAlone(live, habit.days ?? EVERY_DAY, at);
      if (alone.length === 0) continue;
      const words = daysInWords(alone);
      times.set(words, [...(times.get(words) ?? []), at]);
    }
    return [...times].map(([days, list]) => ({
      id: 'nobody-airs',
      text:
        `Airing of ${windowsOf(habit)} at ${andList(list.map(timeOf))} finds nobody at home ${days}; ` +
        'the windows stay shut then. Is another time meant, or a motor that opens them (by: motor)?',
    }));
  });
}

/** Of some days, those on which nobody is there at a minute of the day, nor was a little before. */
function daysAlone(people: readonly Person[], days: number, at: number): number[] {
  return DAYS.flatMap((_, day) => {
    if ((days & (1 << day)) === 0) return [];
    const there = (person: Person) =>
      isIn(person, day, at) || isIn(person, day, at - JUST_LEFT / 60);
    return people.some(there) ? [] : [day];
  });
}

/** Whether a person is usually at home at a minute of a day, in any month. */
function isIn({ schedule }: Person, day: number, minute: number): boolean {
  const before = (day + 6) % 7;
  return schedule.some(
    ({ days, from, to }) =>
      ((days & (1 << day)) !== 0 && from <= minute && minute < to) ||
      ((days & (1 << before)) !== 0 && from <= minute + DAY && minute + DAY < to),
  );
}

function windowsOf({ opening, room, rooms }: Habit): string {
  if (opening !== undefined) return opening;
  if (rooms === 'all') return 'all rooms';
  return andList(rooms ?? [room!]);
}

/** "on weekdays", "every day", "on Monday and Friday". */
function daysInWords(list: readonly number[]): string {
  const bits = list.reduce((all, day) => all | (1 << day), 0);
  if (bits === EVERY_DAY) return 'every day';
  const group = Object.entries(GROUPS).find(([, of]) => of === bits);
  const names = list.map((day) => capital(DAYS[day]!));
  return `on ${group === undefined ? andList(names) : group[0]}`;
}

const DAY = 1440;
