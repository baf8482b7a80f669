import { exposedAreas, VENT_WEIGHTS } from '../../home/exposed-area.ts';
import type { Home, Leakage } from '../../home/home.ts';
import {
  type LeakageShell,
  leakageFromAch50,
  leakageFromArea,
  leakageFromRate,
} from '../../home/leakage.ts';
import { COMMON } from '../../units/preset.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { ACH50, SHELTER_CLASS, VENTS } from '../presets/leakage.ts';
import type { Defaults } from './defaults.ts';
import type { RoomPlan } from './room-plans.ts';

/** How the shell leaks, by whichever figure is known, else by how draughty it feels. */
export function leakageOf(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  home: Pick<Home, 'rooms' | 'elements' | 'panes'>,
  defaults: Defaults,
): Leakage {
  const exposed = exposedAreas(home);
  const volume = home.rooms.reduce((sum, room) => sum + room.volume, 0);
  const given = data.home.leakage ?? {};
  if (given['air changes'] !== undefined) {
    return leakageFromRate(given['air changes'], { volume, exposed });
  }
  const free = defaults.number(['home', 'background vents'], data.home['background vents'], VENTS);
  const facade = exposedAreas(home, VENT_WEIGHTS);
  const whole = facade.reduce((sum, area) => sum + area, 0);
  const share = (area: number) => (whole > 0 ? area / whole : 1 / facade.length);
  const vents = facade.map((area) => free * 1e-6 * share(area));
  const shell: LeakageShell = { volume, exposed, vents };
  const shelter = defaults.word(['site', 'shelter'], data.site?.shelter, 'suburban', COMMON);
  const top = Math.max(...plans.map(({ storey }) => storey)) + 1;
  const storeys = defaults.number(['site', 'storeys'], data.site?.storeys, {
    value: Math.min(3, Math.max(1, top)),
    low: 1,
    high: 3,
    source: 'the highest storey of a room',
  });
  const site = { storeys, shelterClass: SHELTER_CLASS[shelter] };
  if (given.area !== undefined) return leakageFromArea(given.area, shell, site);
  const feels = data.home.build?.draughts;
  if (feels === undefined && given.ach50 === undefined) {
    defaults.word(['home', 'build', 'draughts'], undefined, 'average', COMMON);
  }
  const ach50 = defaults.number(
    ['home', 'leakage', 'ach50'],
    given.ach50,
    ACH50[feels ?? 'average'],
  );
  return leakageFromAch50(ach50, shell, site);
}
