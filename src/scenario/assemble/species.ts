import type { Species } from '../../home/home.ts';
import { sourcePerSecond } from '../../species/concentration-unit.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import type { Path } from '../yaml/place-of.ts';
import type { CarriedSpecies } from './carried-species.ts';
import type { Defaults } from './defaults.ts';
import { outdoorSeries } from './outdoor-series.ts';
import type { RoomPlan } from './room-plans.ts';

/**
 * What the air carries besides water, with its level outdoors.
 *
 * @param files  texts of the files that the scenario names, by their path there
 * @throws InputProblems for a file of levels that cannot be read
 */
export function speciesOf(
  carried: readonly CarriedSpecies[],
  data: ScenarioData,
  files: ReadonlyMap<string, string>,
  defaults: Defaults,
): Species[] {
  return carried.map((facts) => ({
    name: facts.name,
    unit: facts.unit,
    ...(facts.own !== undefined && { label: facts.symbol }),
    ...(facts.own === undefined
      ? outdoors(facts, data, defaults)
      : ownOutdoors(facts, facts.own.outdoors, files)),
    penetration: penetration(facts, data, defaults),
    ...byWindows(facts, data, defaults),
  }));
}

/** How fast each species settles in a room. [1/s] */
export function depositionOf(
  plan: RoomPlan,
  data: ScenarioData,
  carried: readonly CarriedSpecies[],
  defaults: Defaults,
): number[] {
  return carried.map(({ name, deposition, own }) => {
    if (deposition === undefined) return 0;
    const inRoom = plan.data.deposition?.[name];
    const path = pathOf(name, 'deposition', own);
    const given = own === undefined ? data.air?.deposition?.[name] : own.deposition;
    return (inRoom ?? defaults.number(path, given, deposition)) / 3600;
  });
}

/** What the materials of a room give off of each species. [species unit m3/s] */
export function emissionOf(
  plan: RoomPlan,
  data: ScenarioData,
  carried: readonly CarriedSpecies[],
  defaults: Defaults,
): number[] {
  return carried.map(({ name, unit, materials, own }) => {
    if (materials === undefined) return 0;
    const inRoom = plan.data.materials?.[name];
    const given = own === undefined ? data.air?.materials?.[name] : (own.sources?.materials ?? 0);
    const hourly = inRoom ?? defaults.number(['air', 'materials', name], given, materials);
    return sourcePerSecond(hourly * plan.area, unit);
  });
}

function outdoors(
  { name, outdoors: preset, outdoorsByMonth }: CarriedSpecies,
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

function ownOutdoors(
  { name, unit }: CarriedSpecies,
  given: NonNullable<CarriedSpecies['own']>['outdoors'],
  files: ReadonlyMap<string, string>,
): Pick<Species, 'outdoor' | 'outdoorByMonth' | 'outdoorSeries'> {
  if (typeof given === 'number') return { outdoor: given };
  if (Array.isArray(given)) return { outdoor: meanOf(given), outdoorByMonth: given };
  const text = files.get(given.file);
  // Before files are at hand only the scenario itself is checked.
  if (text === undefined) return { outdoor: 0 };
  const series = outdoorSeries(text, given.file, given.column ?? name, unit);
  return { outdoor: meanOf(series.values), outdoorSeries: series };
}

function penetration(
  { name, penetration: preset, own }: CarriedSpecies,
  data: ScenarioData,
  defaults: Defaults,
): number {
  if (preset === undefined) return 1;
  const given = own === undefined ? data.air?.penetration?.[name] : own.penetration;
  return defaults.number(pathOf(name, 'penetration', own), given, preset);
}

function byWindows(
  { name, windowPenetration: preset, own }: CarriedSpecies,
  data: ScenarioData,
  defaults: Defaults,
): Pick<Species, 'windowPenetration'> {
  const key = 'window penetration';
  const given = own === undefined ? data.air?.[key]?.[name] : own[key];
  if (preset === undefined) return given === undefined ? {} : { windowPenetration: given };
  return { windowPenetration: defaults.number(pathOf(name, key, own), given, preset) };
}

/** Where a property of a species stands: with the scenario's own, or in a section for all the others. */
const pathOf = (name: string, key: string, own: CarriedSpecies['own']): Path =>
  own === undefined ? ['air', key, name] : ['air', 'own species', name, key];

const meanOf = (levels: ArrayLike<number>): number => {
  let sum = 0;
  for (let k = 0; k < levels.length; k++) sum += levels[k]!;
  return sum / levels.length;
};
