import type { PresenceSensor } from '../../../control/automation.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { PRESENCE } from '../../presets/sensors.ts';
import type { Defaults } from '../defaults.ts';
import type { RoomPlan } from '../room-plans.ts';

/** One sensor a room, null where nobody looks; none at all where nothing goes by them. */
export function presenceSensors(
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
