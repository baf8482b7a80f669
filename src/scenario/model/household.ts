import * as z from 'zod';
import type { KnownSpecies } from '../../species/species-table.ts';
import { airingModel } from './airing.ts';
import { days, spellShape, times } from './clock-fields.ts';
import { choice, either, list, plainNumber, quantity, section, text } from './fields.ts';
import { dayOfYear } from './month-day.ts';
import { months } from './month-fields.ts';
import { activitySources, bodySources, paintSources } from './species-fields.ts';

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
  'standby',
  'candles',
  'cleaning',
  'tumble dryer',
  'other',
] as const;

const holidays = list(
  section(
    { from: dayOfYear('First day away'), to: dayOfYear('Last day away') },
    'One time away, every year; it may run over the end of the year',
  ),
  'a list of { from, to }, each a month and day such as "07-31"',
  'Away from home through these days',
);

const irregularModel = section(
  {
    spread: quantity(
      'min',
      { min: 0, max: 240 },
      'Standard deviation by which a whole day comes earlier or later',
    ).optional(),
    'days off': quantity('-', { min: 0, max: 1 }, 'Share of days spent like a Sunday').optional(),
    'days out': quantity('-', { min: 0, max: 1 }, 'Share of days spent out altogether').optional(),
  },
  'How days differ from the pattern at random',
);

const paintModel = section(
  {
    room: text('Name of a room'),
    on: dayOfYear('The day it is painted, every year'),
    area: quantity('m2', { above: 0, max: 1000 }, 'Area of wall painted').optional(),
    ...paintSources(),
  },
  'Fresh paint, which gives off vapours for months',
);

const LIVES_WORDS = 'the name of a room, or a list of { days, room }';

const personModel = section(
  {
    name: text('Only for the reader').optional(),
    who: choice(WHO, 'Sets heat, breath and reference bands').optional(),
    age: plainNumber({ min: 0, max: 120 }, 'In years, for what is breathed out').optional(),
    pattern: choice(PATTERNS, 'Where this person is by the clock').optional(),
    'sleeps in': text('Name of a room').optional(),
    'lives in': either(
      [
        text('Name of a room'),
        list(
          section(
            { days: days().describe('On which days').optional(), room: text('Name of a room') },
            'A room on some days',
          ),
          LIVES_WORDS,
          'By day of the week; on days that are not named, the usual room',
        ),
      ],
      LIVES_WORDS,
      'The room used by day',
    ).optional(),
    'works in': text('Name of the room that a person who works at home does it in').optional(),
    schedule: list(
      section(
        {
          room: text('Name of a room'),
          ...spellShape,
          asleep: z
            .boolean({ error: () => 'true or false' })
            .describe('Asleep there')
            .optional(),
        },
        'One stay in a room',
      ),
      'a list of { room, days, months, from, to, asleep }',
      'Instead of a pattern: where this person is; at all other times out',
    ).optional(),
    irregular: irregularModel.optional(),
    holidays: holidays.optional(),
  },
  'One person',
);

const guestModel = section(
  {
    name: text('Only for the reader').optional(),
    number: plainNumber({ min: 1, max: 50, whole: true }, 'How many come').optional(),
    who: choice(WHO, 'Sets heat and breath').optional(),
    room: text('Name of the room they are in').optional(),
    ...spellShape,
    asleep: z
      .boolean({ error: () => 'true or false' })
      .describe('They sleep there')
      .optional(),
  },
  'People who come at a time and live elsewhere',
);

const activityModel = section(
  {
    what: choice(WHATS, 'What is done'),
    name: text('Only for the reader').optional(),
    room: text('Name of a room').optional(),
    days: days().optional(),
    months: months().optional(),
    at: times('When it starts').optional(),
    lasts: quantity('min', { above: 0, max: 1440 }, 'How long each time').optional(),
    water: quantity('L', { min: 0, max: 50 }, 'Water to the air, each time').optional(),
    energy: quantity('kWh', { min: 0, max: 50 }, 'Electricity, each time').optional(),
    gas: quantity('kWh', { min: 0, max: 50 }, 'Gas burnt in an open flame, each time').optional(),
    ...activitySources(),
    number: plainNumber({ above: 0, max: 100 }, 'How many alike, such as plants').optional(),
  },
  'Something that gives heat, water or pollutants by the clock',
);

const bodyModel = section(
  {
    heat: quantity('W', { min: 0, max: 500 }, 'Sensible heat').optional(),
    water: quantity('g/h', { min: 0, max: 1000 }, 'Breath and skin').optional(),
    activity: plainNumber(
      { min: 0.8, max: 10 },
      'Metabolic rate in met, for what is breathed out',
    ).optional(),
    ...bodySources(),
  },
  'Heat, water and species that a grown body gives off; children give a share',
);

/** @param species  whose levels airing may go by */
export const householdModel = (species: readonly KnownSpecies[]) =>
  section(
    {
      people: list(personModel, 'a list of people', 'Who lives here').optional(),
      guests: list(
        guestModel,
        'a list of { number, who, room, days, months, from, to, asleep }',
        'Who comes on some days; nobody while all who live here are on holiday',
      ).optional(),
      bodies: section(
        { awake: bodyModel.optional(), asleep: bodyModel.optional() },
        'What bodies give to a room',
      ).optional(),
      activities: list(activityModel, 'a list of activities', 'What they do').optional(),
      'moisture factor': plainNumber(
        { min: 0, max: 20 },
        'Water of people and activities, over what they would give otherwise',
      ).optional(),
      airing: list(
        airingModel(species),
        'a list of airing habits',
        'When windows are opened',
      ).optional(),
      holidays: holidays.optional(),
      paint: list(
        paintModel,
        `a list of { ${Object.keys(paintModel.shape).join(', ')} }`,
        'What was painted',
      ).optional(),
    },
    'Who lives here, where they are by the clock, and what they do',
  );
