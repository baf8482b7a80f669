import type { Species } from '../../home/home.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { DEPOSITION, OUTDOORS, PENETRATION } from '../presets/air.ts';
import type { Defaults } from './defaults.ts';
import type { RoomPlan } from './room-plans.ts';

/** What the air carries besides water, with its level outdoors. */
export function speciesOf(data: ScenarioData, defaults: Defaults): Species[] {
  return [
    { name: 'co2', unit: 'ppm', ...outdoors('co2', data, defaults), penetration: 1 },
    {
      name: 'tvoc',
      unit: 'µg/m3',
      ...outdoors('tvoc', data, defaults),
      penetration: penetration('tvoc', data, defaults),
    },
    {
      name: 'pm25',
      unit: 'µg/m3',
      ...outdoors('pm25', data, defaults),
      penetration: penetration('pm25', data, defaults),
    },
  ];
}

/** How fast each species settles in a room. [1/s] */
export function depositionOf(
  plan: RoomPlan,
  data: ScenarioData,
  species: readonly Species[],
  defaults: Defaults,
): number[] {
  return species.map(({ name }) => {
    if (name !== 'tvoc' && name !== 'pm25') return 0;
    const own = plan.data.deposition?.[name];
    const path = ['air', 'deposition', name];
    return (own ?? defaults.number(path, data.air?.deposition?.[name], DEPOSITION[name])) / 3600;
  });
}

/** The same by a filled-in activity or body: what it gives by species. [species unit m3/s] */
export function bySpecies(
  species: readonly Species[],
  given: { readonly co2: number; readonly tvoc: number; readonly pm25: number },
): number[] {
  return species.map(({ name }) => given[name as keyof typeof given] ?? 0);
}

function outdoors(
  name: 'co2' | 'tvoc' | 'pm25',
  data: ScenarioData,
  defaults: Defaults,
): Pick<Species, 'outdoor' | 'outdoorByMonth'> {
  const given = data.air?.outdoors?.[name];
  if (Array.isArray(given)) {
    const mean = given.reduce((sum, level) => sum + level, 0) / given.length;
    return { outdoor: mean, outdoorByMonth: given };
  }
  return { outdoor: defaults.number(['air', 'outdoors', name], given, OUTDOORS[name]) };
}

function penetration(name: 'tvoc' | 'pm25', data: ScenarioData, defaults: Defaults): number {
  return defaults.number(
    ['air', 'penetration', name],
    data.air?.penetration?.[name],
    PENETRATION[name],
  );
}
