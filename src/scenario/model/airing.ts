import type { KnownSpecies } from '../../species/species-table.ts';
import { days, times } from './clock-fields.ts';
import { conditions } from './condition.ts';
import { choice, either, list, quantity, section, text } from './fields.ts';
import { months } from './month-fields.ts';

const names = (says: string) =>
  either(
    [text('An activity'), list(text('An activity'), 'a list of activities', 'Activities')],
    'the name or kind of an activity, or a list of them',
    says,
  ).transform((given) => [given].flat());

/** Activities by their name or kind. */
export const activityNames = names;

/** @param species  whose levels conditions may read */
export const airingModel = (species: readonly KnownSpecies[]) =>
  section(
    {
      name: text('For tables').optional(),
      room: text('Name of a room; all its openings are opened').optional(),
      rooms: either(
        [choice(['all'], 'Every room'), list(text('Name of a room'), 'a list of rooms', 'Rooms')],
        'all, or a list of room names',
        'Several rooms',
      ).optional(),
      opening: text('Name of one opening').optional(),
      days: days().optional(),
      months: months().optional(),
      at: times('When it starts, by the clock').optional(),
      when: conditions('Readings that ask for it', species).optional(),
      after: names('Activities whose end asks for it').optional(),
      'on waking': text('Room in which the first sleeper to get up does it').optional(),
      lasts: quantity('min', { above: 0, max: 1440 }, 'How long each time').optional(),
      'open share': quantity('-', { above: 0, max: 1 }, 'Share of the full opening').optional(),
      until: conditions('Shut earlier once all of these hold', species).optional(),
      probability: quantity('-', { min: 0, max: 1 }, 'Chance that somebody does it').optional(),
      delay: quantity(
        'min',
        { min: 0, max: 1440 },
        'Delay from the occasion to the window',
      ).optional(),
      'drier by': quantity(
        'g/m3',
        { min: 0, max: 30 },
        'Only where outdoor air is drier than the room by this absolute humidity',
      ).optional(),
      'not below': quantity(
        '°C',
        { min: -40, max: 40 },
        'Lowest outdoor temperature at which it is done',
      ).optional(),
    },
    'A habit of opening windows; one of room, rooms, opening, and one of at, when, after, on waking',
  );
