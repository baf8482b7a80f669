import type { DecayingSource, Household } from '../../control/household.ts';
import type { Species } from '../../home/home.ts';
import { scaled } from '../../units/preset.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { PAINT, PAINT_PARTS } from '../presets/air.ts';
import type { Defaults } from './defaults.ts';
import type { RoomPlan } from './room-plans.ts';
import { bySpecies } from './species.ts';

/** What dries out: each painted room gives off vapours quickly at first and slowly for months. */
export function paint(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  species: readonly Species[],
  defaults: Defaults,
): Pick<Household, 'decaying'> {
  const painted = data.household?.paint ?? [];
  if (painted.length === 0) return {};
  const decaying = painted.flatMap(({ room: name, on, area, tvoc }, k): DecayingSource[] => {
    const at = (key: string) => ['household', 'paint', k, key];
    const plan = plans.find((one) => one.name === name)!;
    const walls = defaults.number(at('area'), area, scaled(PAINT.walls, plan.area));
    const amount = defaults.number(at('tvoc'), tvoc, scaled(PAINT.amount, walls)); // g
    return PAINT_PARTS.map(({ share, days }) => ({
      name: `paint in ${name}`,
      room: plan.index,
      from: on,
      species: bySpecies(species, {
        co2: 0,
        tvoc: (amount * 1e6 * share) / (days * SECONDS_PER_DAY),
        pm25: 0,
      }),
      timeConstant: days * SECONDS_PER_DAY,
    }));
  });
  return { decaying };
}

const SECONDS_PER_DAY = 86_400;
