import { byName } from '../../species/species-lists.ts';
import type { KnownSpecies } from '../../species/species-table.ts';
import { choice, either, named, plainNumber, quantity, section } from './fields.ts';

const chance = (says: string) => quantity('-', { min: 0, max: 1 }, says);
const time = (says: string, max = 1440) => quantity('min', { min: 0, max }, says);

const presence = either(
  [
    choice(['none'], 'No presence sensor'),
    section(
      {
        'hold on': time(
          'How long it still reports presence after the last sign of life',
        ).optional(),
        delay: time('Delay from the first sign of life until it reports presence').optional(),
        'misses awake': chance('Chance to overlook somebody awake, each step').optional(),
        'misses asleep': chance('Chance to overlook somebody asleep, each step').optional(),
      },
      'A presence sensor',
    ),
  ],
  'none, or a mapping with hold on, delay, misses awake, misses asleep',
  'Presence sensor',
);

/** Biases and the like are in `unit`; a temperature's are differences. */
const reading = (unit: string, most: number, says: string) =>
  either(
    [
      choice(['none'], 'Not measured'),
      section(
        {
          bias: quantity(unit, { min: -most, max: most }, 'Added to every reading').optional(),
          noise: quantity(
            unit,
            { min: 0, max: most },
            'Standard deviation of its noise',
          ).optional(),
          step: quantity(unit, { min: 0, max: most }, 'Readings are rounded to this').optional(),
          lag: time('Time constant of its lag behind the room').optional(),
          every: time('Interval between two reports').optional(),
        },
        'Errors of the sensor: bias, noise, rounding, lag, interval',
      ),
    ],
    'none, or a mapping with bias, noise, step, lag, every',
    says,
  ).optional();

const sensorsShape = (species: readonly KnownSpecies[]) => ({
  presence: presence.optional(),
  temperature: reading('K', 20, 'Temperature of the air'),
  humidity: reading('%', 50, 'Relative humidity'),
  ...byName(species, ({ unit, limits, words }) => reading(unit, limits.level, words)),
});

/** @param species  that sensors may measure */
export const sensorsModel = (species: readonly KnownSpecies[]) =>
  section(
    {
      ...sensorsShape(species),
      rooms: named(
        section(sensorsShape(species), 'One room'),
        'a mapping from room names to sensors',
        'Rooms whose sensors differ; outdoors for the readings from outside',
      ).optional(),
    },
    'Sensors that rules, habits, devices and gates go by, in every room that has none of its own',
  );

export const seed = plainNumber(
  { min: 0, max: 1e9, whole: true },
  'Random seed, so that a run can be repeated',
);
