import type { Home } from '../../home/home.ts';
import { COMMON } from '../../units/preset.ts';
import { USUAL } from '../choices.ts';
import type { ConditionData } from '../model/condition.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import {
  AFTER_WASHING,
  monthsAt,
  ON_MILD_DAYS,
  USUAL_AIRING,
  USUAL_SHARE,
  USUAL_WORDS,
} from '../presets/airing.ts';
import type { Use } from '../presets/rooms.ts';
import type { Defaults } from './defaults.ts';
import { peopleData } from './people.ts';
import { bedsOf } from './person-stays.ts';
import type { RoomPlan } from './room-plans.ts';

/** A habit of opening windows, and its place in the list of the scenario. */
export interface ListedHabit {
  readonly habit: Habit;
  readonly index: number;
}

type Listed = NonNullable<NonNullable<ScenarioData['household']>['airing']>[number];
export type Habit = Exclude<Listed, string>;

/** What of a home usual habits depend on. */
type AiredHome = Pick<Home, 'openings' | 'site'>;

/** Habits as the scenario lists them, with `usual` written out; that is then told as assumed. */
export function airingHabitsOf(
  data: ScenarioData,
  home: AiredHome,
  plans: readonly RoomPlan[],
  defaults: Defaults,
): ListedHabit[] {
  return (data.household?.airing ?? [USUAL]).flatMap((listed, index) => {
    if (listed !== USUAL) return [{ habit: listed, index }];
    const usual = usualHabits(data, home, plans, defaults);
    return usual.map((habit) => ({ habit, index }));
  });
}

function usualHabits(
  data: ScenarioData,
  { openings, site }: AiredHome,
  plans: readonly RoomPlan[],
  defaults: Defaults,
): Habit[] {
  if (openings.length === 0) return [];
  defaults.word(['household', 'airing'], undefined, USUAL_WORDS, COMMON);
  const given = data.household?.['usual airing'];
  const wider = defaults.number(['household', 'usual airing'], given, USUAL_SHARE);
  if (wider === 0) return [];
  const windows = new Set(openings.map(({ room }) => room));
  const beds = bedsOf(peopleData(data, defaults), plans);
  const named = (uses: readonly Use[]): string[] =>
    plans
      .filter(({ index }) => windows.has(index))
      .filter(
        ({ use, index }) => uses.includes(use) || (uses.includes('bedroom') && beds.has(index)),
      )
      .map(({ name }) => name);
  const share = (usual: number): number => Math.min(1, usual * wider);
  const byClock = USUAL_AIRING.map(
    (usual): Habit => ({
      rooms: named(usual.uses),
      ...{ months: monthsAt(usual, site.latitude), at: [usual.at], lasts: usual.lasts },
      'open share': share(usual.openShare),
    }),
  );
  const surely = { probability: 1, delay: 0 };
  const mild: Habit = {
    ...{ name: 'tilted on mild days', rooms: named(ON_MILD_DAYS.uses), lasts: ON_MILD_DAYS.lasts },
    when: [outdoors('above', ON_MILD_DAYS.over)],
    until: [outdoors('below', ON_MILD_DAYS.shutUnder)],
    ...{ 'open share': share(ON_MILD_DAYS.openShare), ...surely },
  };
  const { uses, after, lasts, openShare } = AFTER_WASHING;
  const washing: Habit = {
    ...{ name: 'bathroom after washing', rooms: named(uses), after: [...after], lasts },
    ...{ 'open share': share(openShare), ...surely },
  };
  return [...byClock, mild, washing].filter(({ rooms }) => rooms !== undefined && rooms.length > 0);
}

/** @param value  [°C] */
const outdoors = (is: 'above' | 'below', value: number): ConditionData => ({
  ...{ quantity: 'temperature', room: 'outdoors', is, value, clear: value },
});
