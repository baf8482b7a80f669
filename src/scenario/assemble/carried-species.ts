import { ownSpecies } from '../../species/own-species.ts';
import { type KnownSpecies, SPECIES } from '../../species/species-table.ts';
import { type OwnSpeciesData, unitAsWritten } from '../model/own-species.ts';
import type { ScenarioData } from '../model/scenario-model.ts';

/** A species that a run carries. */
export interface CarriedSpecies extends KnownSpecies {
  /** What the scenario says of one that it names itself. */
  readonly own?: OwnSpeciesData;
}

/** The species that a run carries: those always carried, those the scenario asks for, and its own. */
export function carriedSpecies({ air }: Pick<ScenarioData, 'air'>): CarriedSpecies[] {
  const asked: readonly string[] = air?.species ?? [];
  return [
    ...SPECIES.filter(({ name, onRequest }) => onRequest !== true || asked.includes(name)),
    ...ownOnes(air?.['own species'] ?? {}),
  ];
}

/** The species of which figures are made: those of the table, carried or not, and the scenario's own. */
export const countedSpecies = ({ air }: Pick<ScenarioData, 'air'>): CarriedSpecies[] => [
  ...SPECIES,
  ...ownOnes(air?.['own species'] ?? {}),
];

const ownOnes = (given: Readonly<Record<string, OwnSpeciesData>>): CarriedSpecies[] =>
  Object.entries(given).map(([name, own]) => ({
    ...ownSpecies({ name, label: own.label ?? name, unit: unitAsWritten(own.unit) }),
    own,
  }));
