import type { WeekSchedule } from '../../../control/household.ts';
import type { Home } from '../../../home/home.ts';
import { COMMON } from '../../../units/preset.ts';
import { MINUTES_PER_DAY } from '../../../units/time-units.ts';
import { USUAL } from '../../choices.ts';
import type { ConditionData } from '../../model/condition.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import {
  AFTER_WASHING,
  monthsAt,
  ON_MILD_DAYS,
  USUAL_AIRING,
  USUAL_SHARE,
  USUAL_WORDS,
  USUAL_WORDS_COOLED,
  type UsualHabit,
} from '../../presets/airing.ts';
import type { Use } from '../../presets/rooms.ts';
import { weekIn } from '../../week-value.ts';
import type { Defaults } from '../defaults.ts';
import { LIVED_IN } from '../heating/cooled-rooms.ts';
import { coolingSchedules } from '../heating/cooling-schedules.ts';
import type { RoomPlan } from '../room-plans.ts';
import { peopleData } from './people.ts';
import { bedsOf } from './person-stays.ts';

/** A habit of opening windows, and its place in the list of the scenario. */
export interface ListedHabit {
  readonly habit: Habit;
  readonly index: number;
  /** Whether it is one of those that `usual` stands for. */
  readonly isUsual: boolean;
}

type Listed = NonNullable<NonNullable<ScenarioData['household']>['airing']>[number];
export type Habit = Exclude<Listed, string>;

/** What of a home usual habits depend on. */
type AiredHome = Pick<Home, 'openings' | 'site' | 'cooling' | 'emitters'>;

/** Habits as the scenario lists them, with `usual` written out; that is then told as assumed. */
export function airingHabitsOf(
  data: ScenarioData,
  home: AiredHome,
  plans: readonly RoomPlan[],
  defaults: Defaults,
): ListedHabit[] {
  return (data.household?.airing ?? [USUAL]).flatMap((listed, index): ListedHabit[] => {
    if (listed !== USUAL) return [{ habit: listed, index, isUsual: false }];
    const usual = usualHabits(data, home, plans, defaults);
    return usual.map((habit): ListedHabit => ({ habit, index, isUsual: true }));
  });
}

function usualHabits(
  data: ScenarioData,
  { openings, site, cooling = [], emitters }: AiredHome,
  plans: readonly RoomPlan[],
  defaults: Defaults,
): Habit[] {
  if (openings.length === 0) return [];
  const words = cooling.length === 0 ? USUAL_WORDS : USUAL_WORDS_COOLED;
  defaults.word(['household', 'airing'], undefined, words, COMMON);
  const given = data.household?.['usual airing'];
  const wider = defaults.number(['household', 'usual airing'], given, USUAL_SHARE);
  if (wider === 0) return [];
  const windows = new Set(openings.map(({ room }) => room));
  const beds = bedsOf(peopleData(data, defaults), plans);
  const airedAs = (uses: readonly Use[]): RoomPlan[] =>
    plans
      .filter(({ index }) => windows.has(index))
      .filter(
        ({ use, index }) => uses.includes(use) || (uses.includes('bedroom') && beds.has(index)),
      );
  const named = (uses: readonly Use[]): string[] => airedAs(uses).map(({ name }) => name);
  const schedules = cooling.length === 0 ? [] : coolingSchedules(data, plans, emitters, defaults);
  /** When a habit starts in a room; NaN for never. */
  const startIn = (room: RoomPlan, { at, lasts, months, afterCooling }: UsualHabit): number => {
    const schedule = schedules[room.index];
    if (afterCooling === undefined || schedule === undefined) return at;
    const over = cooledUntil(schedule, months, at, at + lasts);
    return over <= MIDNIGHT ? over : Number.NaN;
  };
  const share = (usual: number): number => Math.min(1, usual * wider);
  const byClock = USUAL_AIRING.flatMap((usual): Habit[] => {
    const months = monthsAt(usual, site.latitude);
    const rooms = airedAs(usual.uses).map((room) => ({
      name: room.name,
      start: startIn(room, { ...usual, months }),
    }));
    const starts = [...new Set(rooms.map(({ start }) => start))].filter(Number.isFinite);
    return starts.map((start) => ({
      rooms: rooms.filter((room) => room.start === start).map(({ name }) => name),
      ...{ months, at: [start], lasts: usual.at + usual.lasts - start },
      'open share': share(usual.openShare),
    }));
  });
  const surely = { probability: 1, delay: 0 };
  const shut = shutAgainstHeat(plans, cooling);
  const mild = (rooms: readonly RoomPlan[], capped: boolean): Habit => ({
    name: capped ? 'tilted on mild days, not on warm ones' : 'tilted on mild days',
    ...{ rooms: rooms.map(({ name }) => name), lasts: ON_MILD_DAYS.lasts },
    when: [
      outdoors('above', ON_MILD_DAYS.over),
      ...(capped ? [outdoors('below', ON_MILD_DAYS.underWhereCooled)] : []),
    ],
    until: [outdoors('below', ON_MILD_DAYS.shutUnder)],
    ...{ 'open share': share(ON_MILD_DAYS.openShare), ...surely },
  });
  const tilted = airedAs(ON_MILD_DAYS.uses);
  const onMildDays = [false, true].map((capped) =>
    mild(
      tilted.filter(({ index }) => shut.has(index) === capped),
      capped,
    ),
  );
  const { uses, after, lasts, openShare } = AFTER_WASHING;
  const washing: Habit = {
    ...{ name: 'bathroom after washing', rooms: named(uses), after: [...after], lasts },
    ...{ 'open share': share(openShare), ...surely },
  };
  return [...byClock, ...onMildDays, washing].filter(
    ({ rooms }) => rooms !== undefined && rooms.length > 0,
  );
}

/**
 * Rooms whose windows are shut against the heat: those that are cooled, and all of a home of which more than
 * half of the rooms to live and sleep in are.
 */
function shutAgainstHeat(
  plans: readonly RoomPlan[],
  cooling: NonNullable<Home['cooling']>,
): ReadonlySet<number> {
  const cooled = new Set(cooling.map(({ room }) => room));
  const lived = plans.filter(({ use }) => LIVED_IN.has(use));
  const most = 2 * lived.filter(({ index }) => cooled.has(index)).length > lived.length;
  return most ? new Set(plans.map(({ index }) => index)) : cooled;
}

/**
 * When cooling that may go on in a stretch of any day in some months is over.
 *
 * @param cooling  setpoint of a room [°C], Infinity while nothing is cooled
 * @param months   as bits
 * @param from     [min after midnight]
 * @param to       [min after that midnight, beyond 1440 for the next day]
 * @returns `from` where nothing is cooled in the stretch [min after midnight]
 */
function cooledUntil(cooling: WeekSchedule, months: number, from: number, to: number): number {
  const week = weekIn(months, cooling);
  for (let minute = to - 1; minute >= from; minute--) {
    for (let day = 0; day < week.length; day += MINUTES_PER_DAY) {
      if (Number.isFinite(week[(day + minute) % week.length]!)) return minute + 1;
    }
  }
  return from;
}

/** Whoever cools later than this leaves the windows shut for the night. [min] */
const MIDNIGHT = 24 * 60;
/** @param value  [°C] */
const outdoors = (is: 'above' | 'below', value: number): ConditionData => ({
  ...{ quantity: 'temperature', room: 'outdoors', is, value, clear: value },
});
