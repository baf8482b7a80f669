import type { Species } from '../../home/home.ts';
import type { KnownSpecies } from '../../species/species-table.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import type { Defaults } from './defaults.ts';
import type { RoomPlan } from './room-plans.ts';

/** What the air carries besides water, with its level outdoors. */
export function speciesOf(
  known: readonly KnownSpecies[],
  data: ScenarioData,
  defaults: Defaults,
): Species[] {
  return known.map((facts) => ({
    name: facts.name,
    unit: facts.unit,
    ...outdoors(facts, data, defaults),
    penetration: penetration(facts, data, defaults),
    ...byWindows(facts, data, defaults),
  }));
}

/** How fast each species settles in a room. [1/s] */
export function depositionOf(
  plan: RoomPlan,
  data: ScenarioData,
  known: readonly KnownSpecies[],
  defaults: Defaults,
): number[] {
  return known.map(({ name, deposition }) => {
    if (deposition === undefined) return 0;
    const own = plan.data.deposition?.[name];
    const path = ['air', 'deposition', name];
    return (own ?? defaults.number(path, data.air?.deposition?.[name], deposition)) / 3600;
  });
}

function outdoors(
  { name, outdoors: preset, outdoorsByMonth }: KnownSpecies,
  data: ScenarioData,
  defaults: Defaults,
): Pick<Species, 'outdoor' | 'outdoorByMonth'> {
  const given = data.air?.outdoors?.[name];
  if (given === undefined && outdoorsByMonth !== undefined) {
    const listed = outdoorsByMonth.join(', ');
    defaults.word(['air', 'outdoors', name], undefined, listed, preset.source);
    return { outdoor: meanOf(outdoorsByMonth), outdoorByMonth: outdoorsByMonth };
  }
  if (Array.isArray(given)) return { outdoor: meanOf(given), outdoorByMonth: given };
  return { outdoor: defaults.number(['air', 'outdoors', name], given, preset) };
}

function penetration(
  { name, penetration: preset }: KnownSpecies,
  data: ScenarioData,
  defaults: Defaults,
): number {
  if (preset === undefined) return 1;
  return defaults.number(['air', 'penetration', name], data.air?.penetration?.[name], preset);
}

function byWindows(
  { name, windowPenetration: preset }: KnownSpecies,
  data: ScenarioData,
  defaults: Defaults,
): Pick<Species, 'windowPenetration'> {
  const given = data.air?.['window penetration']?.[name];
  if (preset === undefined) return given === undefined ? {} : { windowPenetration: given };
  const path = ['air', 'window penetration', name];
  return { windowPenetration: defaults.number(path, given, preset) };
}

const meanOf = (levels: readonly number[]): number =>
  levels.reduce((sum, level) => sum + level, 0) / levels.length;
