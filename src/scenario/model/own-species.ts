import * as z from 'zod';
import { concentrationUnit, isConcentrationUnit } from '../../species/concentration-unit.ts';
import type { KnownSpecies } from '../../species/species-table.ts';
import { either, list, named, quantity, section, text } from './fields.ts';

/** Species that the scenario names itself, each in its own unit. */
export function ownSpeciesModel(own: readonly KnownSpecies[]) {
  const entries = Object.fromEntries(own.map(({ name, unit }) => [name, entry(unit)]));
  return z
    .strictObject(entries, { error: () => 'a mapping from names of species to species' })
    .describe('Species of your own, by name, besides those that the program knows');
}

export type OwnSpeciesData = z.output<ReturnType<typeof entry>>;

/** @param unit  of the concentration */
const entry = (unit: string) => {
  const { amount, rate } = concentrationUnit(unit);
  const level = quantity(unit, { min: 0, max: MOST }, 'A level');
  const share = (says: string) => quantity('-', { min: 0, max: 1 }, says).optional();
  const hourly = (says: string) => quantity(rate, { min: 0, max: MOST }, says).optional();
  return section(
    {
      label: text('Name that tables print; the key where not given').optional(),
      unit: z
        .string({ error: () => UNIT_WORDS })
        .refine((given) => isConcentrationUnit(unitAsWritten(given)), { error: UNIT_WORDS })
        .describe('Unit of its concentration: ppm, ppb, or of something in a cubic metre'),
      outdoors: either(
        [level, months(level, unit), fileModel],
        `a level in ${unit}, a list of twelve, January first, or a mapping with file and column`,
        'Level outdoors: one, twelve by month, or a file of levels by time',
      ),
      penetration: share('Share that survives the way in through leaks'),
      'window penetration': share('Share that survives the way in through open windows'),
      deposition: quantity(
        '1/h',
        { min: 0, max: 100 },
        'Deposition rate: how fast surfaces take it out of the air, or it decays',
      ).optional(),
      'filter share': share('Share of the clean-air rate of purifiers that holds for it'),
      band: section(
        {
          high: level,
          'mean of': quantity(
            'h',
            { min: 0, max: 720 },
            'Averaging time; none where not given',
          ).optional(),
        },
        'Up to which level it counts as fine',
      ).optional(),
      sources: section(
        {
          materials: hourly('Given off all the time by materials, a square metre of floor'),
          person: hourly('Given off by a grown person; children give a share'),
          activities: named(
            quantity(amount, { min: 0, max: MOST }, 'Each time'),
            'a mapping from activities to amounts',
            'Given off by activities, by their name or kind, each time',
          ).optional(),
          devices: named(
            quantity(rate, { min: 0, max: MOST }, 'An hour'),
            'a mapping from devices to amounts an hour',
            'Given off by devices at full output, by their name',
          ).optional(),
        },
        'What gives it off indoors',
      ).optional(),
    },
    'A species of your own',
  );
};

const months = <T extends z.ZodType>(level: T, unit: string) => {
  const words = `a level in ${unit}, or a list of twelve, January first`;
  return list(level, words, 'Levels by month, January first').refine(
    (levels) => levels.length === 12,
    { error: words },
  );
};

const fileModel = section(
  {
    file: text('CSV of levels by time, relative to this file'),
    column: text('Column of the file; its name where not given').optional(),
  },
  'Levels from a file',
);

/** A unit without spellings that mean the same: "ug/m³" is "µg/m3". */
export const unitAsWritten = (given: string): string =>
  given.trim().normalize('NFC').replaceAll('³', '3').replaceAll('μ', 'µ').replace(/^ug\//, 'µg/');

const UNIT_WORDS = 'ppm, ppb, or a unit of something in a cubic metre, such as µg/m3 or Bq/m3';
const MOST = 1e9;
