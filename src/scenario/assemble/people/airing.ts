import type { OpeningSchedule } from '../../../control/household.ts';
import type { Home, Opening } from '../../../home/home.ts';
import { USUAL } from '../../choices.ts';
import { spellOf } from '../../clock-words.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { AIRING } from '../../presets/activities.ts';
import type { Finding } from '../../unplaced-problem.ts';
import type { Defaults } from '../defaults.ts';
import type { RoomPlan } from '../room-plans.ts';
import { airingHabitsOf, type Habit } from './usual-airing.ts';

/** How far each opening stands open by the clock. */
export function openingLines(
  data: ScenarioData,
  home: Pick<Home, 'openings' | 'site' | 'cooling' | 'emitters'>,
  plans: readonly RoomPlan[],
  defaults: Defaults,
): OpeningSchedule[] {
  const { openings } = home;
  const habits = airingHabitsOf(data, home, plans, defaults).flatMap(
    ({ habit, index, isUsual }) => {
      if (habit.at === undefined) return [];
      const at = (key: string) => ['household', 'airing', index, key];
      const lasts = defaults.number(at('lasts'), habit.lasts, AIRING.lasts);
      const value = defaults.number(at('open share'), habit['open share'], AIRING.openShare);
      const { days, months } = habit;
      const spells = habit.at.map((from) => ({
        ...spellOf(days, from, from + lasts, months),
        value,
        ...(habit.by === 'motor' && { byMotor: true }),
        ...(isUsual && { usual: true as const }),
      }));
      return [{ spells, opens: opened(habit, openings, plans) }];
    },
  );
  return openings.map((_, index) => ({
    base: 0,
    spells: habits.flatMap(({ opens, spells }) => (opens.has(index) ? spells : [])),
  }));
}

/** Habits that open nothing: a room without a window, or a name that no opening has. */
export function airingFindings(
  data: ScenarioData,
  openings: readonly Opening[],
  plans: readonly RoomPlan[],
): Finding[] {
  const names = openings.map(({ name }) => name);
  return (data.household?.airing ?? []).flatMap((habit, k): Finding[] => {
    if (habit === USUAL) return [];
    if (opened(habit, openings, plans).size > 0) return [];
    const key =
      habit.opening !== undefined ? 'opening' : habit.room !== undefined ? 'room' : 'rooms';
    const path = ['household', 'airing', k, key];
    if (key === 'opening') return [{ path, expected: `an opening: ${names.join(', ')}`, names }];
    return [{ path, expected: 'a room with a window that opens' }];
  });
}

/** Which openings a habit opens. */
export function opened(
  habit: Habit,
  openings: readonly Opening[],
  plans: readonly RoomPlan[],
): Set<number> {
  const rooms =
    habit.rooms === 'all' ? plans.map(({ name }) => name) : (habit.rooms ?? [habit.room]);
  const wanted = openings.flatMap((opening, index) => {
    if (habit.opening !== undefined) return opening.name === habit.opening ? [index] : [];
    return rooms.includes(plans[opening.room]!.name) ? [index] : [];
  });
  return new Set(wanted);
}
