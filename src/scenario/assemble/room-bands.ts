import { type Band, defaultBands, type RoomBands } from '../../home/bands.ts';
import { byName } from '../../species/species-lists.ts';
import { COMMON } from '../../units/preset.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import type { MouldClass } from '../prepared.ts';
import { usualSeason } from '../presets/heating-season.ts';
import { countedSpecies } from './carried-species.ts';
import type { Defaults } from './defaults.ts';
import type { RoomPlan } from './room-plans.ts';

/**
 * The bands of each room: its own, else those for all rooms, else the usual ones.
 *
 * @param latitude  of the home [deg]
 * @param infants  rooms in which an infant sleeps
 */
export function roomBands(
  data: ScenarioData,
  latitude: number,
  plans: readonly RoomPlan[],
  infants: ReadonlySet<number>,
): RoomBands[] {
  const counted = countedSpecies(data);
  // Of the country, so that plans with another source of heat are held to the same.
  const unheated = usualSeason(data.site?.timezone, latitude, 'boiler').meanBelow.value;
  return plans.map((plan) => {
    const usual = defaultBands(plan.use, infants.has(plan.index) ? unheated : null);
    const own = plan.data.bands ?? {};
    const all = data.bands ?? {};
    return {
      temperature: banded(usual.temperature, all.temperature, own.temperature),
      humidity: banded(usual.humidity, all.humidity, own.humidity),
      species: byName(counted, ({ name, band: { high, hours, reason }, own: named }) => ({
        ...banded({ low: NONE, high, reason }, named?.band, all[name], own[name]),
        hours: named?.band?.['mean of'] ?? hours,
      })),
    };
  });
}

/** Material class of each room's cold spot for the mould index. */
export function mouldClasses(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  defaults: Defaults,
): MouldClass[] {
  const path = ['home', 'mould class'];
  return plans.map(
    (plan) =>
      plan.data['mould class'] ??
      defaults.word(path, data.home['mould class'], 'sensitive', LIKELY),
  );
}

interface Edges {
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

function banded(usual: Band, ...given: readonly (Edges | undefined)[]): Band {
  return given.reduce<Band>((band, edges) => {
    if (edges === undefined) return band;
    const { low = band.low, high = band.high } = edges;
    // An upper edge that somebody gives holds in any weather.
    const { mild } = edges.high === undefined ? band : {};
    return { low, high, reason: SET, ...(mild !== undefined && { mild }) };
  }, usual);
}

const NONE = Number.NEGATIVE_INFINITY;
const SET = 'set in the scenario';
const LIKELY = `${COMMON}: painted plaster and paper are sensitive`;
