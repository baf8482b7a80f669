import { type KnownSpecies, SPECIES } from '../../species/species-table.ts';
import type { ScenarioData } from '../model/scenario-model.ts';

/** The species of the table that a run carries: those always carried and those the scenario asks for. */
export function carriedSpecies({ air }: Pick<ScenarioData, 'air'>): KnownSpecies[] {
  const asked: readonly string[] = air?.species ?? [];
  return SPECIES.filter(({ name, onRequest }) => onRequest !== true || asked.includes(name));
}
