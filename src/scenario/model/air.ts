import { concentrationUnit } from '../../species/concentration-unit.ts';
import { byName } from '../../species/species-lists.ts';
import { type KnownSpecies, SPECIES, type SpeciesName } from '../../species/species-table.ts';
import { choice, either, list, quantity, section } from './fields.ts';
import { ownSpeciesModel } from './own-species.ts';

/** Outdoors: one level, or twelve by month. */
const outdoors = (unit: string, max: number, says: string) => {
  const level = quantity(unit, { min: 0, max }, 'A level');
  const words = `a level in ${unit}, or a list of twelve, January first`;
  const months = list(level, words, 'Levels by month, January first').refine(
    (levels) => levels.length === 12,
    { error: words },
  );
  return either([level, months], words, says).optional();
};

/** How fast a species settles on surfaces of a room. */
const settling = (says: string) => quantity('1/h', { min: 0, max: 20 }, says).optional();

/** @param species  that may settle */
export const deposition = (species: readonly KnownSpecies[]) =>
  section(
    byName(
      species.filter(({ deposition }) => deposition !== undefined),
      ({ words }) => settling(words),
    ),
    'Deposition rate: how fast surfaces take it out of the air',
  ).optional();

/** @param species  that materials may give off */
export const materials = (species: readonly KnownSpecies[], says: string) =>
  section(
    byName(
      species.filter((facts) => facts.materials !== undefined),
      ({ unit, words }) => emission(unit, words),
    ),
    says,
  ).optional();

/** What a square metre of floor gives off in an hour. */
const emission = (unit: string, says: string) =>
  quantity(concentrationUnit(unit).rate, { min: 0, max: 1e9 }, says).optional();

const REQUESTED = SPECIES.filter(({ onRequest }) => onRequest === true).map(({ name }) => name);

/** @param own  the species that the scenario names itself */
export const airModel = (own: readonly KnownSpecies[]) =>
  section(
    {
      species: list(
        choice(REQUESTED as [SpeciesName, ...SpeciesName[]], 'A species'),
        `a list of any of: ${REQUESTED.join(', ')}`,
        'What the air carries besides the usual',
      ).optional(),
      'own species': ownSpeciesModel(own).optional(),
      outdoors: section(
        byName(SPECIES, ({ unit, limits, words }) => outdoors(unit, limits.level, words)),
        'Levels outdoors where the weather file has no column of them',
      ).optional(),
      penetration: surviving('Penetration: share that survives the way in through leaks'),
      'window penetration': surviving(
        'Share that survives the way in through open windows, such as past a fine screen',
      ),
      deposition: deposition(SPECIES),
      materials: materials(
        SPECIES,
        'Given off all the time by materials, a square metre of floor, in rooms without an amount of their own',
      ),
    },
    'What the air carries besides water',
  );

const surviving = (says: string) =>
  section(
    byName(
      SPECIES.filter(({ penetration }) => penetration !== undefined),
      ({ words }) => quantity('-', { min: 0, max: 1 }, words).optional(),
    ),
    says,
  ).optional();
