import type { Automation, PresenceSensor } from '../../../control/automation.ts';
import type { Household } from '../../../control/household.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { PRESENCE } from '../../presets/sensors.ts';
import { SEED } from '../../presets/step.ts';
import type { Defaults } from '../defaults.ts';
import { coolingGates } from '../heating/cooling-schedules.ts';
import { heatingSeason, holidaySetback, usualSeasonOf } from '../heating/heating-season.ts';
import { thermostats } from '../heating/thermostats.ts';
import type { BuiltHome } from '../home/build-home.ts';
import type { RoomPlan } from '../room-plans.ts';
import { airingHabits } from './airing-habits.ts';
import { conditionMaker } from './conditions.ts';
import { deviceControls } from './device-controls.ts';
import { rules } from './rules.ts';

/**
 * What watches and acts in a home that was built from the same scenario.
 *
 * @param kinds  of each of the household's activities, in their order
 */
export function buildAutomation(
  data: ScenarioData,
  { home, plans, blinds }: BuiltHome,
  household: Household,
  kinds: readonly string[],
  defaults: Defaults,
): Automation {
  const condition = conditionMaker(data, plans, defaults);
  const south = home.site.latitude < 0;
  const context = { activities: household.activities, kinds, condition, south, defaults };
  const parts = {
    thermostats: thermostats(data, plans, home.emitters, defaults),
    ...(home.cooling !== undefined && {
      coolingGates: coolingGates(data, plans, home.emitters, defaults),
    }),
    ...(blinds.length > 0 && { blinds: blinds.map(({ control }) => control) }),
    airings: airingHabits(data, home, plans, context),
    deviceControls: deviceControls(data, context),
    rules: rules(data, home, plans, context),
  };
  const sensors = presenceSensors(data, plans, goesByPresence(parts), defaults);
  const caller = plans.find(({ name }) => name === data.heating?.thermostat);
  const usual = usualSeasonOf(data, home.site.latitude, home.emitters);
  return {
    ...heatingSeason(data, usual, defaults),
    ...(usual !== null && holidaySetback(data)),
    ...{ seed: data.seed ?? SEED, presenceSensors: sensors, ...parts },
    ...(caller && { callRoom: caller.index }),
  };
}

function goesByPresence(parts: Omit<Automation, 'seed' | 'presenceSensors'>): boolean {
  const { rules: all, airings } = parts;
  const gated = [...parts.thermostats, ...parts.deviceControls, ...all];
  const gates = [...gated.map(({ gate }) => gate), ...(parts.coolingGates ?? [])];
  const asked = [
    ...all.flatMap((rule) => rule.all),
    ...airings.flatMap(({ after, until }) => [
      ...until,
      ...(after.by === 'readings' ? after.all : []),
    ]),
  ];
  return (
    gates.some(({ present }) => present !== 'no matter') ||
    asked.some(({ quantity }) => quantity === 'presence')
  );
}

/** One sensor a room, null where nobody looks; none at all where nothing goes by them. */
function presenceSensors(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  used: boolean,
  defaults: Defaults,
): (PresenceSensor | null)[] {
  return plans.map(({ name }) => {
    const all = data.sensors?.presence;
    const own = data.sensors?.rooms?.[name]?.presence;
    if (!used || (own ?? all) === 'none') return null;
    const common = all === 'none' ? undefined : all;
    const here = own === 'none' ? undefined : own;
    const number = (key: keyof typeof PRESENCE) =>
      here?.[key] ?? defaults.number(['sensors', 'presence', key], common?.[key], PRESENCE[key]);
    return {
      holdOn: 60 * number('hold on'),
      delay: 60 * number('delay'),
      missesAwake: number('misses awake'),
      missesAsleep: number('misses asleep'),
    };
  });
}
