import { byName } from '../../species/species-lists.ts';
import { SPECIES, type SpeciesName } from '../../species/species-table.ts';
import { choice, either, list, quantity, section } from './fields.ts';

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

export const deposition = () =>
  section(
    byName(
      SPECIES.filter(({ deposition }) => deposition !== undefined),
      ({ words }) => settling(words),
    ),
    'Deposition rate: how fast surfaces take it out of the air',
  ).optional();

const REQUESTED = SPECIES.filter(({ onRequest }) => onRequest === true).map(({ name }) => name);

export const airModel = section(
  {
    species: list(
      choice(REQUESTED as [SpeciesName, ...SpeciesName[]], 'A species'),
      `a list of any of: ${REQUESTED.join(', ')}`,
      'What the air carries besides the usual',
    ).optional(),
    outdoors: section(
      byName(SPECIES, ({ unit, limits, words }) => outdoors(unit, limits.level, words)),
      'Levels outdoors where the weather file has no column of them',
    ).optional(),
    penetration: section(
      byName(
        SPECIES.filter(({ penetration }) => penetration !== undefined),
        ({ words }) => quantity('-', { min: 0, max: 1 }, words).optional(),
      ),
      'Penetration: share that survives the way in through leaks',
    ).optional(),
    'window penetration': section(
      byName(
        SPECIES.filter(({ penetration }) => penetration !== undefined),
        ({ words }) => quantity('-', { min: 0, max: 1 }, words).optional(),
      ),
      'Share that survives the way in through open windows, such as past a fine screen',
    ).optional(),
    deposition: deposition(),
  },
  'What the air carries besides water',
);
