import { windRatio } from '../../../home/wind-ratio.ts';
import { COMMON } from '../../../units/preset.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import {
  FLAT_EAVES,
  LIKELY_TERRAIN,
  SHELTER_CLASS,
  STATION_HEIGHT,
} from '../../presets/leakage.ts';
import type { BuildFacts } from '../build-facts.ts';
import type { Defaults } from '../defaults.ts';
import type { RoomPlan } from '../room-plans.ts';

/**
 * Wind that meets the home's walls over the wind that the station measured, by what is said of site and
 * station or else likely.
 *
 * @param elevation  of a storey's floor [m]
 */
export function windOf(
  { site }: ScenarioData,
  plans: readonly RoomPlan[],
  { shape }: Pick<BuildFacts, 'shape'>,
  elevation: (storey: number) => number,
  defaults: Defaults,
): number {
  const shelter = defaults.word(['site', 'shelter'], site?.shelter, 'suburban', COMMON);
  const likely = LIKELY_TERRAIN[shelter];
  const terrain = defaults.word(['site', 'terrain'], site?.terrain, likely, 'by its shelter');
  const station = site?.['wind station'];
  const at = (key: string) => ['site', 'wind station', key];
  const open = 'where weather services measure';
  const stationTerrain = defaults.word(at('terrain'), station?.terrain, 'open', open);
  const stationHeight = defaults.number(at('height'), station?.height, STATION_HEIGHT);
  const eaves = defaults.number(
    ['site', 'eaves'],
    site?.eaves,
    shape === 'flat' ? FLAT_EAVES : eavesOf(site?.storeys, plans, elevation),
  );
  return windRatio(
    { terrain, height: eaves },
    { terrain: stationTerrain, height: stationHeight },
    SHELTER_CLASS[shelter],
  );
}

/** Over the ceiling of the highest room, or of the storeys that the home is said to have. */
function eavesOf(
  storeys: number | undefined,
  plans: readonly RoomPlan[],
  elevation: (storey: number) => number,
) {
  const tops = plans.map(({ storey, height }) => elevation(storey) + height);
  const said = storeys === undefined ? 0 : elevation(storeys - 1) + plans[0]!.height;
  const value = Math.min(290, Math.max(2, Number(Math.max(said, ...tops).toPrecision(3))));
  return { value, low: value, high: value + 1.5, source: 'ceiling of the highest storey' };
}
