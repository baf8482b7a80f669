import {
  type MessageLimits,
  OPEN_GATE,
  type Rule,
  type RuleAction,
} from '../../../control/automation.ts';
import type { Home } from '../../../home/home.ts';
import type { Preset } from '../../../units/preset.ts';
import type { ConditionData } from '../../model/condition.ts';
import type { ActionData } from '../../model/rule.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { AIRING } from '../../presets/activities.ts';
import { ACTING } from '../../presets/control.ts';
import { FROST_GUARD } from '../../presets/heating.ts';
import { HERE, nameInRoom, OCCUPIED, roomsOfRule } from '../../rule-rooms.ts';
import type { Path } from '../../yaml/place-of.ts';
import { during } from '../level-schedule.ts';
import { type RoomPlan, roomCalled } from '../room-plans.ts';
import type { ControlContext } from './device-controls.ts';
import { openingsCalled } from './openings-called.ts';

/** Rules with names turned into numbers; one with rooms becomes one in each of them. */
export function rules(
  data: ScenarioData,
  home: Home,
  plans: readonly RoomPlan[],
  context: ControlContext,
): Rule[] {
  const all = plans.map(({ name }) => name);
  return (data.rules ?? []).flatMap((given, r) => {
    const rooms = roomsOfRule(given, all);
    const inRoom = (room: string | null): Rule => ({
      name: room === null ? given.name : nameInRoom(given.name, room),
      all: conditionsIn(room, given).map(context.condition),
      onDelay: 60 * (given['on delay'] ?? 0),
      gate: given.gate ?? OPEN_GATE,
      ...(room !== null && {
        room: all.indexOf(room),
        series: { number: r, name: given.name, room },
      }),
      ...limitsOf(given),
      actions: given.response.map((action, a) =>
        actionOf(action, ['rules', r, 'response', a], room, { data, home, plans, context }),
      ),
    });
    return rooms === null ? [inRoom(null)] : rooms.map(inRoom);
  });
}

type RuleData = NonNullable<ScenarioData['rules']>[number];

function conditionsIn(room: string | null, { when, rooms }: RuleData): ConditionData[] {
  if (room === null) return [...when];
  const placed = when.map((one) =>
    !OF_THE_HOME.has(one.quantity) && (one.room === null || one.room === HERE)
      ? { ...one, room }
      : one,
  );
  return rooms === OCCUPIED ? [...placed, somebodyIn(room)] : placed;
}

const somebodyIn = (room: string): ConditionData => ({
  quantity: 'presence',
  room,
  is: 'above',
  value: 0.5,
  clear: 0.5,
});

function limitsOf(given: RuleData): { readonly limits?: MessageLimits } {
  const { 'quiet hours': quiet, 'most a day': most, 'repeat after': repeat } = given;
  if (quiet === undefined && most === undefined && repeat === undefined) return {};
  return {
    limits: {
      ...(quiet && { quiet: during(quiet) }),
      ...(most !== undefined && { mostPerDay: most }),
      ...(repeat !== undefined && { repeatAfter: 60 * repeat }),
    },
  };
}

interface RuleContext {
  readonly data: ScenarioData;
  readonly home: Home;
  readonly plans: readonly RoomPlan[];
  readonly context: ControlContext;
}

function actionOf(
  action: ActionData,
  path: Path,
  here: string | null,
  { data, home, plans, context }: RuleContext,
): RuleAction {
  const { tell, lamp, run, stop, open, close, setpoint } = action;
  if (tell !== undefined) return { do: 'tell', what: tell };
  if (lamp !== undefined) return { do: 'lamp', what: lamp };
  const device = home.devices.findIndex(({ name }) => name === (run ?? stop));
  if (device >= 0) return { do: 'device', device, on: run !== undefined };
  const window = open ?? close;
  if (window !== undefined) {
    const { defaults } = context;
    const lasts = open === undefined ? ACTING.closedFor : AIRING.lasts;
    const number = (key: 'lasts' | 'probability' | 'delay', preset: Preset) =>
      defaults.number([...path, key], action[key], preset);
    return {
      do: 'window',
      openings: openingsCalled(placeOf(window, here), home.openings, plans),
      openShare:
        open === undefined
          ? 0
          : defaults.number([...path, 'open share'], action['open share'], AIRING.openShare),
      lasts: 60 * number('lasts', lasts),
      probability: number('probability', ACTING.probability),
      delay: 60 * number('delay', ACTING.delay),
    };
  }
  const named = placeOf(action.room ?? HERE, here);
  const room = roomCalled(named, plans);
  const frost = data.heating?.['frost guard'] ?? FROST_GUARD.value;
  const asked = setpoint === undefined || setpoint === 'off' ? frost : setpoint;
  return { do: 'setpoint', room, setpoint: asked };
}

/** Quantities without a room. */
const OF_THE_HOME: ReadonlySet<string> = new Set([
  ...['hour', 'hour since noon', 'electricity price'],
]);

const placeOf = (written: string, here: string | null): string =>
  written === HERE && here !== null ? here : written;
