import type { AiringHabit } from '../../../control/automation.ts';
import type { Home } from '../../../home/home.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { AIRING } from '../../presets/activities.ts';
import { ACTING } from '../../presets/control.ts';
import { opened } from '../people/airing.ts';
import { activitiesNamed } from '../people/named-activities.ts';
import { airingHabitsOf, type Habit } from '../people/usual-airing.ts';
import { type RoomPlan, roomCalled } from '../room-plans.ts';
import type { ControlContext } from './device-controls.ts';

/** What people do about readings, after activities and on waking; habits by the clock are lines. */
export function airingHabits(
  data: ScenarioData,
  home: Pick<Home, 'openings' | 'site' | 'cooling' | 'emitters'>,
  plans: readonly RoomPlan[],
  context: ControlContext,
): AiringHabit[] {
  const { condition, defaults } = context;
  const { openings } = home;
  const habits = airingHabitsOf(data, home, plans, defaults);
  return habits.flatMap(({ habit, index, isUsual }): AiringHabit[] => {
    if (habit.at !== undefined) return [];
    const at = (key: string) => ['household', 'airing', index, key];
    const probability = defaults.number(at('probability'), habit.probability, ACTING.probability);
    const delay = 60 * defaults.number(at('delay'), habit.delay, ACTING.delay);
    const common = {
      name: habit.name ?? nameOf(habit),
      openings: [...opened(habit, openings, plans)],
      openShare: defaults.number(at('open share'), habit['open share'], AIRING.openShare),
      lasts: 60 * defaults.number(at('lasts'), habit.lasts, AIRING.lasts),
      until: (habit.until ?? []).map(condition),
      probability,
      delay,
      drierBy: habit['drier by'] ?? null,
      notBelow: habit['not below'] ?? Number.NEGATIVE_INFINITY,
      ...(isUsual && { usual: true as const }),
    };
    return occasions(habit, plans, context).map((after) => ({ ...common, after }));
  });
}

/** One for each activity that it may follow. */
function occasions(
  habit: Habit,
  plans: readonly RoomPlan[],
  { activities, kinds, condition }: ControlContext,
): AiringHabit['after'][] {
  if (habit.when !== undefined) return [{ by: 'readings', all: habit.when.map(condition) }];
  const room = roomCalled(habit['on waking'], plans);
  if (habit['on waking'] !== undefined) return [{ by: 'waking', room }];
  return activitiesNamed(habit.after ?? [], activities, kinds).map((activity) => ({
    by: 'activity',
    activity,
    later: 0,
  }));
}

/** "bedroom after shower" */
function nameOf(habit: Habit): string {
  const where = habit.opening ?? habit.room ?? [habit.rooms ?? []].flat().join(', ');
  if (habit['on waking'] !== undefined) return `${where} on waking`;
  return habit.after === undefined
    ? `${where} by readings`
    : `${where} after ${habit.after.join(', ')}`;
}
