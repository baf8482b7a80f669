import { OPEN_GATE, type Rule, type RuleAction } from '../../control/automation.ts';
import type { Home } from '../../home/home.ts';
import type { Preset } from '../../units/preset.ts';
import type { ActionData } from '../model/rule.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { AIRING } from '../presets/activities.ts';
import { ACTING } from '../presets/control.ts';
import { FROST_GUARD } from '../presets/heating.ts';
import type { Path } from '../yaml/place-of.ts';
import type { ControlContext } from './device-controls.ts';
import { openingsCalled } from './openings-called.ts';
import type { RoomPlan } from './room-plans.ts';

/** Rules with names turned into numbers. */
export function rules(
  data: ScenarioData,
  home: Home,
  plans: readonly RoomPlan[],
  context: ControlContext,
): Rule[] {
  return (data.rules ?? []).map(
    ({ name, when, 'on delay': delay = 0, gate = OPEN_GATE, response }, r) => ({
      name,
      all: when.map(context.condition),
      onDelay: 60 * delay,
      gate,
      actions: response.map((action, a) =>
        actionOf(action, ['rules', r, 'response', a], { data, home, plans, context }),
      ),
    }),
  );
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
      openings: openingsCalled(window, home.openings, plans),
      openShare:
        open === undefined
          ? 0
          : defaults.number([...path, 'open share'], action['open share'], AIRING.openShare),
      lasts: 60 * number('lasts', lasts),
      probability: number('probability', ACTING.probability),
      delay: 60 * number('delay', ACTING.delay),
    };
  }
  const room = plans.findIndex(({ name }) => name === action.room);
  const frost = data.heating?.['frost guard'] ?? FROST_GUARD.value;
  const asked = setpoint === undefined || setpoint === 'off' ? frost : setpoint;
  return { do: 'setpoint', room, setpoint: asked };
}
