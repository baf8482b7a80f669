import type { KnownSpecies } from '../../species/species-table.ts';
import { AIRING } from '../presets/activities.ts';
import { ACTING } from '../presets/control.ts';
import { days, times } from './clock-fields.ts';
import { conditions } from './condition.ts';
import { choice, either, list, quantity, type Shown, section, text } from './fields.ts';
import { months } from './month-fields.ts';

const names = (says: string, more: Shown) =>
  either(
    [
      text('An activity', { eg: 'shower' }),
      list(text('An activity', { eg: 'shower' }), 'a list of activities', 'Activities'),
    ],
    'the name or kind of an activity, or a list of them',
    says,
    more,
  ).transform((given) => [given].flat());

/** Activities by their name or kind. */
export const activityNames = names;

/** @param species  whose levels conditions may read */
export const airingModel = (species: readonly KnownSpecies[]) =>
  section(
    {
      name: text('Name of the habit, for tables', {
        eg: 'morning airing',
        otherwise: 'its place',
      }).optional(),
      room: text('Name of a room, all of whose openings are opened', { eg: 'bedroom' }).optional(),
      rooms: either(
        [
          choice(['all'], 'Every room'),
          list(text('Name of a room', { eg: 'bedroom' }), 'a list of rooms', 'Rooms'),
        ],
        'all, or a list of room names',
        'Rooms whose openings are opened, or all',
        { eg: ['bedroom', 'living'] },
      ).optional(),
      opening: text('Name of the one opening that is opened', { eg: 'bedroom window' }).optional(),
      days: days().optional(),
      months: months().optional(),
      at: times('Time of day at which the window is opened, or several', {
        eg: ['07:00', '21:30'],
      }).optional(),
      by: choice(
        ['people', 'motor'],
        'Who opens the window by the clock: people, if one of them is at home, or a motor',
        { usual: 'people' },
      ).optional(),
      when: conditions('Readings that ask for the window to be opened', species).optional(),
      after: names('Activities whose end asks for the window to be opened', {
        eg: 'shower',
      }).optional(),
      'on waking': text('Name of the room in which the first sleeper to get up opens the window', {
        eg: 'bedroom',
      }).optional(),
      lasts: quantity('min', { above: 0, max: 1440 }, 'How long the window stays open each time', {
        usual: AIRING.lasts,
      }).optional(),
      'open share': openShare().optional(),
      until: conditions(
        'Conditions that, once all are met, shut the window earlier',
        species,
        'never',
        {
          eg: [{ room: 'bedroom', reading: 'temperature', under: 16 }],
          otherwise: 'none',
        },
      ).optional(),
      probability: quantity(
        '-',
        { min: 0, max: 1 },
        'Chance that somebody who is asked opens the window',
        { usual: ACTING.probability },
      ).optional(),
      delay: quantity(
        'min',
        { min: 0, max: 1440 },
        'Delay from the occasion until somebody opens the window',
        { usual: ACTING.delay },
      ).optional(),
      'drier by': quantity(
        'g/m3',
        { min: 0, max: 30 },
        'By how much absolute humidity outdoor air has to be drier than the room',
        { eg: 1, otherwise: 'no matter' },
      ).optional(),
      'not below': quantity(
        '°C',
        { min: -40, max: 40 },
        'Lowest outdoor temperature at which the window is opened',
        { eg: '-5 °C', otherwise: 'no matter' },
      ).optional(),
    },
    'A habit of opening windows, with one of room, rooms, opening, and one of at, when, after, on waking',
    { eg: { room: 'bedroom', at: '07:00', lasts: '10 min' } },
  );

/** How far a window is opened by somebody who airs. */
export const openShare = () =>
  quantity(
    '-',
    { above: 0, max: 1 },
    'How far the window is opened, as a share of its full opening',
    { usual: AIRING.openShare },
  );
