import { LOGGED_QUANTITIES } from '../../log/quantities.ts';
import { choice, either, named, section, text } from './fields.ts';

const QUANTITIES = LOGGED_QUANTITIES.map(({ name }) => name) as [string, ...string[]];

const reading = either(
  [
    choice(['leave out'], 'Not to be read'),
    section(
      {
        quantity: choice(QUANTITIES, 'What was logged'),
        room: text('Room it was logged in; with no room and no place, the whole home').optional(),
        place: choice(['outdoors', 'home'], 'Where, if not in a room').optional(),
        device: text('Name of the device whose power it is').optional(),
        unit: text('Unit of the numbers, such as °F, share or kWh').optional(),
      },
      'One reading',
    ),
  ],
  'leave out, or a mapping with quantity, room, place, device, unit',
  'What a column, or a name in a long file, is',
);

export const logModel = section(
  {
    zone: text(
      'Clock of the logger: a zone by its IANA name, UTC, or hours ahead such as +01:00',
    ).optional(),
    dates: choice(
      ['day first', 'month first', 'year first'],
      'Order of day and month in dates',
    ).optional(),
    readings: named(
      reading,
      'a mapping from names of columns to what they are',
      'By name of the column (or of the reading, in a long file), as the file writes it',
    ).optional(),
  },
  'How files of readings are to be taken that are given on the command line',
);
