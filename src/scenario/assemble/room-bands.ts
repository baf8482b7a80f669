import { type Band, defaultBands, type RoomBands } from '../../home/bands.ts';
import { byName } from '../../species/species-lists.ts';
import { COMMON } from '../../units/preset.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import type { MouldClass } from '../prepared.ts';
import { countedSpecies } from './carried-species.ts';
import type { Defaults } from './defaults.ts';
import type { RoomPlan } from './room-plans.ts';

/** The bands of each room: its own, else those for all rooms, else the usual ones. */
export function roomBands(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  infants: ReadonlySet<number>,
): RoomBands[] {
  const counted = countedSpecies(data);
  return plans.map((plan) => {
    const usual = defaultBands(plan.use, infants.has(plan.index));
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
    return { low: edges.low ?? band.low, high: edges.high ?? band.high, reason: SET };
  }, usual);
}

const NONE = Number.NEGATIVE_INFINITY;
const SET = 'set in the scenario';
const LIKELY = `${COMMON}: painted plaster and paper are sensitive`;
