import type { Household } from '../../control/household.ts';
import type { Notice } from '../../home/notices.ts';
import { andList } from '../../units/word-list.ts';
import type { Habit } from '../assemble/people/usual-airing.ts';
import { USUAL } from '../choices.ts';
import { EVERY_DAY, timeOf } from '../clock-words.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { daysAlone, daysInWords } from './days-alone.ts';

/**
 * Habits of airing by the clock for which nobody who lives in the home is usually there, nor has left
 * within a quarter of an hour, so that the windows stay shut. It may be a motor that is meant.
 */
export function nobodyAirs(
  { household }: Pick<ScenarioData, 'household'>,
  home: Pick<Household, 'people'>,
): Notice[] {
  return (household?.airing ?? []).flatMap((habit): Notice[] => {
    if (habit === USUAL || habit.by === 'motor') return [];
    const times = new Map<string, number[]>();
    for (const at of habit.at ?? []) {
      const alone = daysAlone(home, habit.days ?? EVERY_DAY, at);
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

function windowsOf({ opening, room, rooms }: Habit): string {
  if (opening !== undefined) return opening;
  if (rooms === 'all') return 'all rooms';
  return andList(rooms ?? [room!]);
}
