import { LOGGED_QUANTITIES } from '../../log/quantities.ts';
import { choice, either, named, quantity, section, text } from './fields.ts';

const QUANTITIES: readonly string[] = LOGGED_QUANTITIES.map(({ name }) => name);

const reading = (own: readonly string[]) =>
  either(
    [
      choice(['leave out'], 'Not to be read'),
      section(
        {
          quantity: choice(
            [...QUANTITIES, ...own] as [string, ...string[]],
            'What quantity was logged',
          ),
          room: text('Name of the room that it was logged in', {
            eg: 'bedroom',
            otherwise: 'the whole home, or the place',
          }).optional(),
          place: choice(['outdoors', 'home'], 'Where it was logged, if not in a room').optional(),
          device: text('Name of the device whose power was logged', { eg: 'drier' }).optional(),
          unit: text('Unit of the logged numbers, such as °F, share or kWh', {
            eg: '°F',
            otherwise: 'the documented unit',
          }).optional(),
        },
        'One reading',
        { eg: { quantity: 'temperature', room: 'bedroom' } },
      ),
    ],
    'leave out, or a mapping with quantity, room, place, device, unit',
    'What a column, or a name in a long file, is',
    { eg: { quantity: 'temperature', room: 'bedroom' } },
  );

/** @param own  names of the species that the scenario names itself */
export const logModel = (own: readonly string[]) =>
  section(
    {
      zone: text(
        'Clock of the logger: a zone by its IANA name, UTC, or hours ahead such as +01:00',
        {
          eg: 'UTC',
          otherwise: 'that of the home',
        },
      ).optional(),
      dates: choice(
        ['day first', 'month first', 'year first'],
        'Order of day and month in the dates of the log',
        { otherwise: 'as the dates themselves tell' },
      ).optional(),
      'gas beside heating': quantity(
        '-',
        { min: 0, max: 0.9 },
        'Share of the logged gas that heats water and cooks instead of rooms, for a fit',
        { usual: 0.2 },
      ).optional(),
      'electricity beside heating': quantity(
        '-',
        { min: 0, max: 0.9 },
        'Share of the logged electricity of the heating that heats water instead of rooms, for a fit',
        { eg: 0.1, otherwise: '0.15 for a heat pump, none for direct electric heating' },
      ).optional(),
      readings: named(
        reading(own),
        'a mapping from names of columns to what they are',
        'What each column is (or each reading, in a long file), by its name as the file writes it',
        {
          eg: { 'Bed temp': { quantity: 'temperature', room: 'bedroom' } },
          otherwise: 'by their names',
        },
      ).optional(),
    },
    'How files of readings are to be taken that are given on the command line',
    { eg: { zone: 'UTC', dates: 'day first' }, otherwise: 'as the files themselves tell' },
  );
