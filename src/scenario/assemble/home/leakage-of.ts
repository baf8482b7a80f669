import { crackPlaces } from '../../../home/crack-places.ts';
import type { Home, Leakage } from '../../../home/home.ts';
import {
  type LeakageShell,
  leakageFromAch50,
  leakageFromArea,
  leakageFromRate,
} from '../../../home/leakage.ts';
import { COMMON } from '../../../units/preset.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { ROOF_PITCH } from '../../presets/fabric.ts';
import { ACH50, PARTY_LEAKAGE, VENTS } from '../../presets/leakage.ts';
import type { Finding } from '../../unplaced-problem.ts';
import type { BuildFacts } from '../build-facts.ts';
import type { Defaults } from '../defaults.ts';

/** How the shell leaks, by whichever figure is known, else by how draughty it feels. */
export function leakageOf(
  data: ScenarioData,
  facts: BuildFacts,
  home: Pick<Home, 'rooms' | 'elements' | 'panes'>,
  defaults: Defaults,
  findings: Finding[],
): Leakage {
  const volume = home.rooms.reduce((sum, room) => sum + room.volume, 0);
  const build = data.home.build ?? {};
  const given = data.home.leakage ?? {};
  const rooms = home.rooms.length;
  if (given['air changes'] !== undefined) {
    const places = crackPlaces(home, build['roof pitch'] ?? ROOF_PITCH.value);
    return leakageFromRate(given['air changes'], { volume, rooms, places });
  }
  const at = (key: string) => ['home', 'build', key];
  const pitch = home.elements.some(({ kind }) => kind === 'roof')
    ? defaults.number(at('roof pitch'), build['roof pitch'], ROOF_PITCH)
    : 0;
  const party = at('party wall leakage');
  const free = defaults.number(['home', 'background vents'], data.home['background vents'], VENTS);
  findings.push(...tooManyVents(free, home));
  const shell: LeakageShell = {
    ...{ volume, rooms, places: crackPlaces(home, pitch), vents: free * 1e-6 },
    partyShare: defaults.number(party, build['party wall leakage'], PARTY_LEAKAGE[facts.shape]),
  };
  if (given.area !== undefined) return leakageFromArea(given.area, shell);
  if (build.draughts === undefined && given.ach50 === undefined) {
    defaults.word(at('draughts'), undefined, 'average', COMMON);
  }
  const ach50 = defaults.number(
    ['home', 'leakage', 'ach50'],
    given.ach50,
    ACH50[build.draughts ?? 'average'],
  );
  return leakageFromAch50(ach50, shell);
}

/** Vents that are larger than the walls and windows they sit in. [mm2] */
function tooManyVents(
  free: number,
  { elements, panes }: Pick<Home, 'elements' | 'panes'>,
): Finding[] {
  const walls = elements.filter(({ kind, far }) => kind === 'wall' && far.to === 'outdoors');
  const area = [...walls, ...panes].reduce((sum, part) => sum + part.area, 0);
  if (area === 0 || free * 1e-6 <= area) return [];
  const expected = `vents no larger than the outer walls (${area.toFixed(2)} m2)`;
  return [{ path: ['home', 'background vents'], expected, got: `${(free * 1e-6).toFixed(2)} m2` }];
}
