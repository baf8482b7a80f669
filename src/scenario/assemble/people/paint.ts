import type { DecayingSource, Household } from '../../../control/household.ts';
import type { KnownSpecies } from '../../../species/species-table.ts';
import { scaled } from '../../../units/preset.ts';
import { SECONDS_PER_DAY } from '../../../units/time-units.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { PAINT_PARTS, PAINTED_WALLS } from '../../presets/air.ts';
import type { Defaults } from '../defaults.ts';
import type { RoomPlan } from '../room-plans.ts';

/** What dries out: each painted room gives off vapours quickly at first and slowly for months. */
export function paint(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  species: readonly KnownSpecies[],
  defaults: Defaults,
): Pick<Household, 'decaying'> {
  const painted = data.household?.paint ?? [];
  if (painted.length === 0) return {};
  const decaying = painted.flatMap((given, k): DecayingSource[] => {
    const at = (key: string) => ['household', 'paint', k, key];
    const plan = plans.find((one) => one.name === given.room)!;
    const walls = defaults.number(at('area'), given.area, scaled(PAINTED_WALLS, plan.area));
    const amounts = species.map(({ sources: { paint: source } }) => {
      if (source === undefined) return 0;
      const { key, usual } = source;
      return defaults.number(at(key), given[key], scaled(usual, walls));
    }); // g
    return PAINT_PARTS.map(({ share, days }) => ({
      name: `paint in ${plan.name}`,
      room: plan.index,
      from: given.on,
      species: amounts.map((amount) => (amount * 1e6 * share) / (days * SECONDS_PER_DAY)),
      timeConstant: days * SECONDS_PER_DAY,
    }));
  });
  return { decaying };
}
