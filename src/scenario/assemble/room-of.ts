import type { Room } from '../../home/home.ts';
import { bufferFromFurnishing } from '../../home/moisture-buffer.ts';
import type { KnownSpecies } from '../../species/species-table.ts';
import { COMMON } from '../../units/preset.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { INTERNAL_MASS_AREA } from '../presets/fabric.ts';
import { COLD_SPOT, INNER_ROOM, likelyColdSpot } from '../presets/rooms.ts';
import type { BuildFacts } from './build-facts.ts';
import type { Defaults } from './defaults.ts';
import type { RoomPlan } from './room-plans.ts';
import { depositionOf } from './species.ts';

interface RoomContext {
  readonly data: ScenarioData;
  readonly facts: BuildFacts;
  readonly species: readonly KnownSpecies[];
  readonly defaults: Defaults;
  /** True where no wall, floor or window of the room is outdoors or on the ground. */
  readonly inside: boolean;
}

/** A room as the engine wants it: air, mass, moisture buffer, coldest corner. */
export function roomOf(
  plan: RoomPlan,
  { data, facts, species, defaults, inside }: RoomContext,
): Room {
  const { name, area, height } = plan;
  const furnishing =
    plan.data.furnishing ??
    defaults.word(['home', 'furnishing'], data.home.furnishing, 'furnished', COMMON);
  return {
    name,
    floorArea: area,
    volume: area * height,
    furnishingFactor: facts.furnishingFactor,
    mass: { capacity: facts.internalMass * area, area: INTERNAL_MASS_AREA * area },
    buffer: bufferFromFurnishing(furnishing, area, height),
    coldSpotFactor: coldSpotOf(plan, data, facts, inside, defaults),
    deposition: depositionOf(plan, data, species, defaults),
    sunToAir: facts.sunToAir,
  };
}

/** A word is a range; where it was given for the home, or nowhere, the range is the home's. */
function coldSpotOf(
  plan: RoomPlan,
  data: ScenarioData,
  facts: BuildFacts,
  inside: boolean,
  defaults: Defaults,
): number {
  const own = plan.data['cold spot factor'];
  const path = ['home', 'rooms', plan.name, 'cold spot factor'];
  if (typeof own === 'number') return own;
  if (own !== undefined) return defaults.number(path, undefined, COLD_SPOT[own]);
  if (inside) return defaults.number(path, undefined, INNER_ROOM);
  const home = data.home['cold spot factor'];
  if (typeof home === 'number') return home;
  const word = home ?? likelyColdSpot(facts.wallUValue);
  return defaults.number(['home', 'cold spot factor'], undefined, COLD_SPOT[word]);
}
