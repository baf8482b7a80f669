import type { WeekSchedule } from '../../../control/household.ts';
import type { Doorway } from '../../../home/home.ts';
import { COMMON } from '../../../units/preset.ts';
import { spellOf } from '../../clock-words.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { DOORWAY } from '../../presets/leakage.ts';
import type { Defaults } from '../defaults.ts';
import { during } from '../level-schedule.ts';
import type { RoomPlan } from '../room-plans.ts';

export interface DoorwayPlan {
  readonly doorway: Doorway;
  /** 1 open, 0 shut. */
  readonly open: WeekSchedule;
}

/**
 * The doorways given, or one from every room to the hall of its storey, and from every hall to the first;
 * to the first hall where a storey has none, and to the first room where the home has none.
 */
export function doorwayPlans(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  defaults: Defaults,
): DoorwayPlan[] {
  const halls = plans.filter(({ use }) => use === 'hall');
  const hub = halls[0] ?? plans[0]!;
  const others = plans.filter((plan) => plan !== hub);
  const hallOf = (plan: RoomPlan): RoomPlan =>
    (plan.use === 'hall' ? null : halls.find(({ storey }) => storey === plan.storey)) ?? hub;
  const given: NonNullable<ScenarioData['home']['doorways']> =
    data.home.doorways ?? others.map((plan) => ({ between: [plan.name, hallOf(plan).name] }));
  if (data.home.doorways === undefined && others.length > 0) {
    const words =
      halls.length > 1
        ? `every room opens to the hall of its storey, halls to ${hub.name}`
        : `every room opens to ${hub.name}`;
    defaults.word(['home', 'doorways'], undefined, words, COMMON);
  }
  return given.map((doorway, k) => {
    const [a, b] = doorway.between.map((name) => plans.find((plan) => plan.name === name)!) as [
      RoomPlan,
      RoomPlan,
    ];
    const sleeping = a.use === 'bedroom' || b.use === 'bedroom';
    const number = (key: 'width' | 'height' | 'mixing' | 'shut') =>
      doorway[key] ?? defaults.number(['home', 'doors', key], data.home.doors?.[key], DOORWAY[key]);
    const words = sleeping ? 'shut from 22:00 to 07:00' : 'always';
    if (doorway.open === undefined && data.home.doorways !== undefined) {
      defaults.word(['home', 'doorways', k, 'open'], undefined, words, COMMON);
    }
    return {
      doorway: {
        name: `${a.name} - ${b.name}`,
        rooms: [a.index, b.index],
        width: number('width'),
        height: number('height'),
        mixing: number('mixing') / 3600,
        shut: number('shut') / 3600,
      },
      open:
        doorway.open !== undefined
          ? during(doorway.open)
          : during(sleeping ? [spellOf(undefined, 22 * 60, 7 * 60)] : [], 0, 1),
    };
  });
}
