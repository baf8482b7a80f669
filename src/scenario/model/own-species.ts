import * as z from 'zod';
import { concentrationUnit, isConcentrationUnit } from '../../species/concentration-unit.ts';
import type { KnownSpecies } from '../../species/species-table.ts';
import { either, list, named, quantity, section, text, told } from './fields.ts';

/** Species that the scenario names itself, each in its own unit. */
export function ownSpeciesModel(own: readonly KnownSpecies[]) {
  const entries = Object.fromEntries(own.map(({ name, unit }) => [name, entry(unit)]));
  return z
    .strictObject(entries, { error: () => 'a mapping from names of species to species' })
    .meta({
      description: 'Species of your own, each under its name, besides those that the program knows',
      eg: { radon: { unit: 'Bq/m3', outdoors: 8 } },
      otherwise: 'none',
    });
}

export type OwnSpeciesData = z.output<ReturnType<typeof entry>>;

/** @param unit  of the concentration */
const entry = (unit: string) => {
  const { amount, rate } = concentrationUnit(unit);
  const level = quantity(unit, { min: 0, max: MOST }, 'A level of the species', { eg: 8 });
  const share = (says: string, usual: number) =>
    quantity('-', { min: 0, max: 1 }, says, { eg: 0.9, usual }).optional();
  const hourly = (says: string) =>
    quantity(rate, { min: 0, max: MOST }, says, { eg: 36, usual: 0 }).optional();
  return section(
    {
      label: text('Name of the species that tables print', {
        eg: 'Radon',
        otherwise: 'its key',
      }).optional(),
      unit: z
        .string({ error: () => UNIT_WORDS })
        .refine((given) => isConcentrationUnit(unitAsWritten(given)), { error: UNIT_WORDS })
        .meta({
          description:
            'Unit of the concentration of the species: ppm, ppb, or of something in a cubic metre',
          eg: 'Bq/m3',
        }),
      outdoors: either(
        [level, months(level, unit), fileModel],
        `a level in ${unit}, a list of twelve, January first, or a mapping with file and column`,
        'Level of the species outdoors: one, twelve by month, or a file of levels by time',
        { eg: 8 },
      ),
      penetration: share('Share of the species outdoors that survives the way in through leaks', 1),
      'window penetration': share(
        'Share of the species outdoors that survives the way in through open windows',
        1,
      ),
      deposition: quantity(
        '1/h',
        { min: 0, max: 100 },
        'Deposition rate: how fast surfaces take the species out of the air, or it decays',
        { eg: 0.5, usual: 0 },
      ).optional(),
      'filter share': share(
        'Share of the clean-air rate of purifiers that holds for the species',
        0,
      ),
      'supply filter share': share(
        'Share of the species outdoors that filters in the supply air of ventilation hold back',
        0,
      ),
      band: section(
        {
          high: told(level, 'Level up to which the species counts as fine', { eg: 100 }),
          'mean of': quantity(
            'h',
            { min: 0, max: 720 },
            'Averaging time of the level that counts',
            { eg: '24 h', usual: 0 },
          ).optional(),
        },
        'Level up to which the species counts as fine',
        { eg: { high: 100 }, otherwise: 'any level' },
      ).optional(),
      sources: section(
        {
          materials: hourly(
            'What materials give off of the species all the time, a square metre of floor',
          ),
          person: hourly(
            'What a grown person gives off of the species, of which children give a share',
          ),
          activities: named(
            quantity(amount, { min: 0, max: MOST }, 'Amount each time', { eg: 30 }),
            'a mapping from activities to amounts',
            'What activities give off of the species each time, by their name or kind',
            { eg: { cleaning: 30 }, otherwise: 'nothing' },
          ).optional(),
          devices: named(
            quantity(rate, { min: 0, max: MOST }, 'Amount in an hour', { eg: 18 }),
            'a mapping from devices to amounts an hour',
            'What devices give off of the species at full output, by their name',
            { eg: { printer: 18 }, otherwise: 'nothing' },
          ).optional(),
        },
        'What gives off the species indoors',
        { eg: { person: 36 }, otherwise: 'nothing' },
      ).optional(),
    },
    'A species of your own',
    { eg: { unit: 'Bq/m3', outdoors: 8 } },
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
    file: text('Path of a CSV file of levels by time, from the folder of this file', {
      eg: 'radon.csv',
    }),
    column: text('Name of the column of the file', {
      eg: 'radon',
      otherwise: 'name of the species',
    }).optional(),
  },
  'Levels from a file',
  { eg: { file: 'radon.csv' } },
);

/** A unit without spellings that mean the same: "ug/m³" is "µg/m3". */
export const unitAsWritten = (given: string): string =>
  given.trim().normalize('NFC').replaceAll('³', '3').replaceAll('μ', 'µ').replace(/^ug\//, 'µg/');

const UNIT_WORDS = 'ppm, ppb, or a unit of something in a cubic metre, such as µg/m3 or Bq/m3';
const MOST = 1e9;
