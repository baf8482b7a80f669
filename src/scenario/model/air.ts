import { concentrationUnit } from '../../species/concentration-unit.ts';
import { byName } from '../../species/species-lists.ts';
import { type KnownSpecies, SPECIES, type SpeciesName } from '../../species/species-table.ts';
import type { Preset } from '../../units/preset.ts';
import { choice, either, list, quantity, type Shown, section } from './fields.ts';
import { ownSpeciesModel } from './own-species.ts';

/** Outdoors: one level, or twelve by month. */
const outdoors = (unit: string, max: number, says: string, usual: Preset | null, eg: number) => {
  const level = quantity(unit, { min: 0, max }, 'A level outdoors', { eg });
  const words = `a level in ${unit}, or a list of twelve, January first`;
  const months = list(level, words, 'Levels by month, January first').refine(
    (levels) => levels.length === 12,
    { error: words },
  );
  return either([level, months], words, says, {
    eg,
    ...(usual === null ? { otherwise: 'its season' } : { usual }),
  }).optional();
};

/** How fast a species settles on surfaces of a room. */
const settling = (says: string, more: Shown) =>
  quantity('1/h', { min: 0, max: 20 }, says, more).optional();

/**
 * @param species    that may settle
 * @param otherwise  what holds instead; the usual rates where absent
 */
export const deposition = (species: readonly KnownSpecies[], otherwise?: string) =>
  section(
    byName(
      species.filter(({ deposition }) => deposition !== undefined),
      ({ words, deposition: usual }) =>
        settling(`${words}: how much of it surfaces take in an hour, over what the air holds`, {
          eg: 0.5,
          ...(otherwise === undefined ? { usual: usual as Preset } : { otherwise }),
        }),
    ),
    'Deposition rate: how fast surfaces take a species out of the air',
    { otherwise: otherwise ?? 'the usual rates' },
  ).optional();

/**
 * @param species    that materials may give off
 * @param otherwise  what holds instead; the usual amounts where absent
 */
export const materials = (species: readonly KnownSpecies[], says: string, otherwise?: string) =>
  section(
    byName(
      species.filter((facts) => facts.materials !== undefined),
      ({ unit, words, materials: usual }) =>
        emission(unit, `${words} that materials give off, a square metre of floor`, {
          eg: 100,
          ...(otherwise === undefined ? { usual: usual as Preset } : { otherwise }),
        }),
    ),
    says,
    { otherwise: otherwise ?? 'the usual amounts' },
  ).optional();

/** What a square metre of floor gives off in an hour. */
const emission = (unit: string, says: string, more: Shown) =>
  quantity(concentrationUnit(unit).rate, { min: 0, max: 1e9 }, says, more).optional();

const REQUESTED = SPECIES.filter(({ onRequest }) => onRequest === true).map(({ name }) => name);

/** @param own  the species that the scenario names itself */
export const airModel = (own: readonly KnownSpecies[]) =>
  section(
    {
      species: list(
        choice(REQUESTED as [SpeciesName, ...SpeciesName[]], 'A species'),
        `a list of any of: ${REQUESTED.join(', ')}`,
        'What the air carries besides carbon dioxide, organic vapours and fine particles',
        { otherwise: 'nothing more' },
      ).optional(),
      'own species': ownSpeciesModel(own).optional(),
      outdoors: section(
        byName(SPECIES, ({ unit, limits, words, outdoors: usual, outdoorsByMonth }) =>
          outdoors(
            unit,
            limits.level,
            `${words} outdoors, one level or twelve by month`,
            outdoorsByMonth === undefined ? usual : null,
            usual.value,
          ),
        ),
        'Levels outdoors where the weather file has no column of them',
        { otherwise: 'the usual levels' },
      ).optional(),
      penetration: surviving(
        'Penetration: share of a species outdoors that survives the way in through leaks',
        (facts) => facts.penetration,
      ),
      'window penetration': surviving(
        'Share of a species outdoors that survives the way in through open windows, such as past a fine screen',
        (facts) => facts.windowPenetration,
      ),
      deposition: deposition(SPECIES),
      materials: materials(
        SPECIES,
        'What materials give off all the time, a square metre of floor, in rooms without an amount of their own',
      ),
    },
    'What the air carries besides water, with levels outdoors and losses on the way in',
    { otherwise: 'the usual' },
  );

const surviving = (says: string, usualOf: (facts: KnownSpecies) => Preset | undefined) =>
  section(
    byName(
      SPECIES.filter(({ penetration }) => penetration !== undefined),
      (facts) => {
        const usual = usualOf(facts);
        return quantity('-', { min: 0, max: 1 }, `${facts.words}: share that survives the way in`, {
          eg: 0.8,
          ...(usual === undefined ? { otherwise: 'all of it' } : { usual }),
        }).optional();
      },
    ),
    says,
    { otherwise: 'the usual shares' },
  ).optional();
