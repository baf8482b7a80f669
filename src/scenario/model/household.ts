import { z } from 'zod';
import { clock, days, spellShape } from './clock-fields.ts';
import { choice, either, list, plainNumber, quantity, section, text } from './fields.ts';
import { months } from './month-fields.ts';

export const WHO = ['adult', 'frail adult', 'child', 'infant'] as const;
export const PATTERNS = [
  'works away on weekdays',
  'works at home',
  'at home',
  'school child',
  'infant',
] as const;
export const WHATS = [
  'shower',
  'bath',
  'cooking',
  'light meal',
  'dishes',
  'laundry dried indoors',
  'plants',
  'fridge',
  'lights and appliances',
  'other',
] as const;

const CLOCKS = 'a local time such as "07:00", or a list of them';

const times = either(
  [clock('One time'), list(clock('One time'), CLOCKS, 'Several times')],
  CLOCKS,
  'When it starts',
).transform((given) => [given].flat());

const personModel = section(
  {
    name: text('Only for the reader').optional(),
    who: choice(WHO, 'Sets heat, breath and reference bands').optional(),
    pattern: choice(PATTERNS, 'Where this person is by the clock').optional(),
    'sleeps in': text('Name of a room').optional(),
    'lives in': text('Name of the room used by day').optional(),
    stays: list(
      section(
        {
          room: text('Name of a room'),
          ...spellShape,
          asleep: z
            .boolean({ error: () => 'true or false' })
            .describe('Asleep there')
            .optional(),
        },
        'One stay',
      ),
      'a list of { room, days, months, from, to, asleep }',
      'Instead of a pattern: where this person is; at all other times out',
    ).optional(),
  },
  'One person',
);

const activityModel = section(
  {
    what: choice(WHATS, 'What is done'),
    name: text('Only for the reader').optional(),
    room: text('Name of a room').optional(),
    days: days().optional(),
    months: months().optional(),
    at: times.optional(),
    lasts: quantity('min', { above: 0, max: 1440 }, 'How long each time').optional(),
    water: quantity('L', { min: 0, max: 50 }, 'Water to the air, each time').optional(),
    energy: quantity('kWh', { min: 0, max: 50 }, 'Electricity, each time').optional(),
    number: plainNumber({ above: 0, max: 100 }, 'How many alike, such as plants').optional(),
  },
  'Something that gives heat or water by the clock',
);

const airingModel = section(
  {
    room: text('Name of a room; all its openings are opened').optional(),
    rooms: either(
      [choice(['all'], 'Every room'), list(text('Name of a room'), 'a list of rooms', 'Rooms')],
      'all, or a list of room names',
      'Several rooms',
    ).optional(),
    opening: text('Name of one opening').optional(),
    days: days().optional(),
    months: months().optional(),
    at: times,
    lasts: quantity('min', { above: 0, max: 1440 }, 'How long each time').optional(),
    wide: quantity('-', { above: 0, max: 1 }, 'Share of the full opening').optional(),
  },
  'A habit of opening windows; exactly one of room, rooms, opening',
);

const bodyModel = section(
  {
    heat: quantity('W', { min: 0, max: 500 }, 'Sensible heat').optional(),
    water: quantity('g/h', { min: 0, max: 1000 }, 'Breath and skin').optional(),
    co2: quantity('m3/h', { min: 0, max: 1 }, 'Carbon dioxide breathed out').optional(),
  },
  'What a grown body gives; children give a share of it',
);

export const householdModel = section(
  {
    people: list(personModel, 'a list of people', 'Who lives here').optional(),
    bodies: section(
      { awake: bodyModel.optional(), asleep: bodyModel.optional() },
      'What bodies give to a room',
    ).optional(),
    activities: list(activityModel, 'a list of activities', 'What they do').optional(),
    airing: list(airingModel, 'a list of airing habits', 'When windows are opened').optional(),
  },
  'Who lives here, where they are by the clock, and what they do',
);
