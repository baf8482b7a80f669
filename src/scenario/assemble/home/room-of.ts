import type { Room } from '../../../home/home.ts';
import { bufferFromValue, bufferingSurface } from '../../../home/moisture-buffer.ts';
import { COMMON } from '../../../units/preset.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { INTERNAL_MASS_AREA } from '../../presets/fabric.ts';
import { bathroomTiles, DEEP_MOISTURE, MOISTURE_BUFFER } from '../../presets/moisture.ts';
import { COLD_SPOT, INNER_ROOM, likelyColdSpot } from '../../presets/rooms.ts';
import type { BuildFacts } from '../build-facts.ts';
import type { CarriedSpecies } from '../carried-species.ts';
import type { Defaults } from '../defaults.ts';
import type { RoomPlan } from '../room-plans.ts';
import { depositionOf, emissionOf } from '../species.ts';

interface RoomContext {
  readonly data: ScenarioData;
  readonly facts: BuildFacts;
  readonly species: readonly CarriedSpecies[];
  readonly defaults: Defaults;
  /** Of its floor. [m] */
  readonly elevation: number;
  /** True where no wall, floor or window of the room is outdoors or on the ground. */
  readonly inside: boolean;
}

/** A room as the engine wants it: air, mass, moisture buffer, coldest corner. */
export function roomOf(
  plan: RoomPlan,
  { data, facts, species, defaults, elevation, inside }: RoomContext,
): Room {
  const { name, area, height } = plan;
  return {
    name,
    floorArea: area,
    volume: area * height,
    elevation,
    storey: plan.storey,
    furnishingFactor: facts.furnishingFactor,
    mass: { capacity: facts.internalMass * area, area: INTERNAL_MASS_AREA * area },
    buffer: bufferOf(plan, data, defaults),
    tiledArea: tilesOf(plan, defaults),
    coldSpotFactor: coldSpotOf(plan, data, facts, inside, defaults),
    deposition: depositionOf(plan, data, species, defaults),
    emission: emissionOf(plan, data, species, defaults),
    sunToAir: facts.sunToAir,
  };
}

function tilesOf({ name, use, area, height, data }: RoomPlan, defaults: Defaults): number {
  const given = data['tiled area'];
  if (use !== 'bathroom') return given ?? 0;
  const path = ['home', 'rooms', name, 'tiled area'];
  return defaults.number(path, given, bathroomTiles(area, height));
}

/** A room's own furnishing, else the home's buffer value, else that of the home's furnishing. */
function bufferOf(
  { data: { furnishing }, area, height }: RoomPlan,
  { home }: ScenarioData,
  defaults: Defaults,
): Room['buffer'] {
  const valueOfHome = (): number => {
    const given = home['moisture buffer'];
    if (given !== undefined) return given;
    const word = defaults.word(['home', 'furnishing'], home.furnishing, 'furnished', COMMON);
    return defaults.number(['home', 'moisture buffer'], undefined, MOISTURE_BUFFER[word]);
  };
  const value = furnishing === undefined ? valueOfHome() : MOISTURE_BUFFER[furnishing].value;
  const deep = defaults.number(['home', 'deep moisture'], home['deep moisture'], DEEP_MOISTURE);
  return bufferFromValue(value, deep, bufferingSurface(area, height));
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
  const likely = home === undefined ? likelyColdSpot(facts.wallUValue) : COLD_SPOT[home];
  return defaults.number(['home', 'cold spot factor'], undefined, likely);
}
