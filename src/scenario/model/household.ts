import * as z from 'zod';
import { USUAL_ACTIVITY } from '../../species/breath-by-age.ts';
import type { KnownSpecies } from '../../species/species-table.ts';
import { PATTERNS, USUAL, WHATS, WHO } from '../choices.ts';
import { PAINTED_WALLS } from '../presets/air.ts';
import { USUAL_SHARE } from '../presets/airing.ts';
import { IRREGULAR } from '../presets/control.ts';
import { ASLEEP, AWAKE } from '../presets/people.ts';
import { airingModel } from './airing.ts';
import { days, spellShape, times } from './clock-fields.ts';
import { choice, either, list, plainNumber, quantity, section, text } from './fields.ts';
import { dayOfYear } from './month-day.ts';
import { months } from './month-fields.ts';
import { activitySources, bodySources, paintSources } from './species-fields.ts';

const holidays = (says: string) =>
  list(
    section(
      {
        from: dayOfYear('First day away, every year', '07-20'),
        to: dayOfYear('Last day away, every year', '08-03'),
      },
      'One time away, every year, which may run over the end of the year',
    ),
    'a list of { from, to }, each a month and day such as "07-31"',
    says,
    { otherwise: 'none' },
  );

const irregularModel = section(
  {
    spread: quantity(
      'min',
      { min: 0, max: 240 },
      'Standard deviation by which a whole day comes earlier or later',
      { usual: IRREGULAR.spread },
    ).optional(),
    'days off': quantity('-', { min: 0, max: 1 }, 'Share of days that are spent like a Sunday', {
      usual: IRREGULAR['days off'],
    }).optional(),
    'days out': quantity('-', { min: 0, max: 1 }, 'Share of days that are spent out altogether', {
      usual: IRREGULAR['days out'],
    }).optional(),
  },
  'How days differ from the pattern at random',
  { eg: { spread: '20 min' }, otherwise: 'not at all' },
);

const paintModel = section(
  {
    room: text('Name of the room that is painted', { eg: 'bedroom' }),
    on: dayOfYear('Day on which the room is painted, every year', '04-15'),
    area: quantity('m2', { above: 0, max: 1000 }, 'Area of wall that is painted', {
      eg: '30 m2',
      otherwise: `${PAINTED_WALLS.value} for a square metre of floor`,
    }).optional(),
    ...paintSources(),
  },
  'Fresh paint, which gives off vapours for months',
);

const LIVES_WORDS = 'the name of a room, or a list of { days, room }';

const personModel = section(
  {
    name: text('Name of the person, for tables', {
      eg: 'A',
      otherwise: 'who it is, and a number',
    }).optional(),
    who: choice(
      WHO,
      'Who the person is, which sets heat, breath and the ranges that count as fine',
      { usual: 'adult' },
    ).optional(),
    age: plainNumber({ min: 0, max: 120 }, 'Age of the person, for what is breathed out', {
      unit: 'years',
      eg: 72,
      otherwise: 'a mean of who it is',
    }).optional(),
    pattern: choice(
      PATTERNS,
      'Usual days of the person, which say where he or she is by the clock',
      { otherwise: 'as goes with who it is' },
    ).optional(),
    'sleeps in': text('Name of the room that the person sleeps in', {
      eg: 'bedroom',
      otherwise: 'two grown people and infants in the first bedroom, others in one of their own',
    }).optional(),
    'lives in': either(
      [
        text('Name of a room', { eg: 'living' }),
        list(
          section(
            {
              days: days().describe('Days on which the person uses this room').optional(),
              room: text('Name of the room that is used on these days', { eg: 'living' }),
            },
            'A room on some days',
          ),
          LIVES_WORDS,
          'By day of the week, with the usual room on days that are not named',
        ),
      ],
      LIVES_WORDS,
      'Room that the person uses by day, one or by day of the week',
      { eg: 'living', otherwise: 'the first living room' },
    ).optional(),
    'works in': text('Name of the room in which a person who works at home does it', {
      eg: 'study',
      otherwise: 'study or living room',
    }).optional(),
    schedule: list(
      section(
        {
          room: text('Name of the room that the person is in', { eg: 'study' }),
          ...spellShape,
          asleep: z
            .boolean({ error: () => 'true or false' })
            .meta({ description: 'Whether the person is asleep there', eg: true, usual: false })
            .optional(),
        },
        'One stay in a room',
      ),
      'a list of { room, days, months, from, to, asleep }',
      'Where this person is by the clock, instead of a pattern, and out at all other times',
      { otherwise: 'by the pattern' },
    ).optional(),
    irregular: irregularModel.optional(),
    holidays: holidays('When this person is away from home, every year').optional(),
  },
  'One person who lives here',
  { eg: { who: 'adult', pattern: 'works at home', 'works in': 'study' } },
);

const guestModel = section(
  {
    name: text('Name of the guests, for tables', {
      eg: 'grandparents',
      otherwise: 'who they are',
    }).optional(),
    number: plainNumber({ min: 1, max: 50, whole: true }, 'How many guests come', {
      eg: 2,
      usual: 1,
    }).optional(),
    who: choice(WHO, 'Who the guests are, which sets heat and breath', {
      usual: 'adult',
    }).optional(),
    room: text('Name of the room that the guests are in', {
      eg: 'living',
      otherwise: 'the room used by day',
    }).optional(),
    ...spellShape,
    asleep: z
      .boolean({ error: () => 'true or false' })
      .meta({ description: 'Whether the guests sleep there', eg: true, usual: false })
      .optional(),
  },
  'People who come at a time and live elsewhere',
  { eg: { number: 2, days: 'Sun', from: '15:00', to: '19:00' } },
);

const activityModel = section(
  {
    what: choice(
      WHATS,
      'What is done, which says where, when and how much where nothing else does',
    ),
    name: text('Name of the activity, for tables and habits', {
      eg: 'big wash',
      otherwise: 'what is done',
    }).optional(),
    room: text('Name of the room in which it is done', {
      eg: 'kitchen',
      otherwise: 'by what is done',
    }).optional(),
    days: days().optional(),
    months: months().optional(),
    at: times('Time of day at which the activity starts, or several', {
      eg: ['07:00', '18:00'],
      otherwise: 'usual for what is done',
    }).optional(),
    lasts: quantity('min', { above: 0, max: 1440 }, 'How long the activity takes each time', {
      eg: '30 min',
      otherwise: 'usual for what is done',
    }).optional(),
    water: quantity(
      'L',
      { min: 0, max: 50 },
      'Water that the activity gives to the air each time',
      { eg: '0.5 L', otherwise: 'usual for what is done' },
    ).optional(),
    energy: quantity('kWh', { min: 0, max: 50 }, 'Electricity that the activity takes each time', {
      eg: '1 kWh',
      otherwise: 'usual for what is done',
    }).optional(),
    gas: quantity(
      'kWh',
      { min: 0, max: 50 },
      'Gas that the activity burns in an open flame each time, instead of electricity',
      { eg: '0.9 kWh', usual: 0 },
    ).optional(),
    ...activitySources(),
    number: plainNumber({ above: 0, max: 100 }, 'How many alike there are, such as plants', {
      eg: 5,
      usual: 1,
    }).optional(),
  },
  'Something that gives heat, water or pollutants by the clock',
  { eg: { what: 'cooking', at: '18:00', lasts: '40 min' } },
);

const bodyModel = (state: 'awake' | 'asleep') => {
  const usual = state === 'awake' ? AWAKE : ASLEEP;
  return section(
    {
      heat: quantity('W', { min: 0, max: 500 }, `Sensible heat of a grown body ${state}`, {
        usual: usual.heat,
      }).optional(),
      water: quantity(
        'g/h',
        { min: 0, max: 1000 },
        `Water from breath and skin of a grown body ${state}`,
        { usual: usual.water },
      ).optional(),
      activity: plainNumber(
        { min: 0.8, max: 10 },
        `Metabolic rate of a grown body ${state}, for what is breathed out`,
        { unit: 'met', usual: USUAL_ACTIVITY[state] },
      ).optional(),
      ...bodySources(state),
    },
    `What a grown body gives off ${state}, of which children give a share`,
    { eg: { heat: usual.heat.value }, otherwise: 'the usual' },
  );
};

/** @param species  whose levels airing may go by */
export const householdModel = (species: readonly KnownSpecies[]) =>
  section(
    {
      people: list(personModel, 'a list of people', 'Everybody who lives here', {
        otherwise: 'two adults who work away on weekdays',
      }).optional(),
      guests: list(
        guestModel,
        'a list of { number, who, room, days, months, from, to, asleep }',
        'Who comes on some days, but nobody while all who live here are on holiday',
        { otherwise: 'nobody' },
      ).optional(),
      bodies: section(
        { awake: bodyModel('awake').optional(), asleep: bodyModel('asleep').optional() },
        'What grown bodies give to a room, awake and asleep',
        { eg: { awake: { heat: '75 W' } }, otherwise: 'the usual' },
      ).optional(),
      activities: list(
        activityModel,
        'a list of activities',
        'What people do that gives heat, water or pollutants',
        { otherwise: 'usual days of such a household' },
      ).optional(),
      'moisture factor': plainNumber(
        { min: 0, max: 20 },
        'Water of people and activities as a multiple of what they would give otherwise',
        { usual: 1 },
      ).optional(),
      'usual airing': plainNumber(
        { min: 0, max: 10 },
        'How far windows stand open in the usual habits of airing, as a multiple of what is usual',
        { usual: USUAL_SHARE },
      ).optional(),
      airing: list(
        either(
          [choice([USUAL], 'All habits that are usual in households'), airingModel(species)],
          'an airing habit, or usual',
          'A habit of opening windows, or the word usual for all those that households have',
          { eg: USUAL },
        ),
        `a list of airing habits, such as [${USUAL}]`,
        'Habits of opening windows; an empty list keeps them shut',
        { otherwise: 'as usual in households', eg: [USUAL] },
      ).optional(),
      'open when mild': plainNumber(
        { min: 0, max: 1 },
        'Share of every window that stands open on average at 20 °C outdoors and above, none at 5 °C and below',
        { usual: 0 },
      ).optional(),
      holidays: holidays('When all who live here are away from home, every year').optional(),
      paint: list(
        paintModel,
        `a list of { ${Object.keys(paintModel.shape).join(', ')} }`,
        'Fresh paint on walls',
        { otherwise: 'none' },
      ).optional(),
    },
    'Who lives here, where they are by the clock, and what they do',
    {
      eg: { people: [{ who: 'adult', pattern: 'works at home' }] },
      otherwise: 'two adults with usual days',
    },
  );
