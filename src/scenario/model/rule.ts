import type * as z from 'zod';
import type { KnownSpecies } from '../../species/species-table.ts';
import { AIRING } from '../presets/activities.ts';
import { ACTING } from '../presets/control.ts';
import { openShare } from './airing.ts';
import { hours } from './clock-fields.ts';
import { conditions } from './condition.ts';
import { choice, either, list, plainNumber, quantity, section, text } from './fields.ts';
import { gate } from './gate.ts';

const DEEDS = ['tell', 'lamp', 'run', 'stop', 'open', 'close', 'setpoint'] as const;

const actionModel = section(
  {
    tell: text('What people are told', { eg: 'open a window' }).optional(),
    lamp: text('What a lamp shows', { eg: 'red' }).optional(),
    run: text('Name of the device that is run while the rule holds', { eg: 'drier' }).optional(),
    stop: text('Name of the device that is stopped while the rule holds', {
      eg: 'drier',
    }).optional(),
    open: text('Name of the room or opening, or here, that somebody home and awake opens', {
      eg: 'bedroom',
    }).optional(),
    close: text('Name of the room or opening, or here, that somebody home and awake closes', {
      eg: 'bedroom',
    }).optional(),
    setpoint: either(
      [
        choice(['off'], 'Only the frost guard'),
        quantity('°C', { min: -10, max: 40 }, 'A setting', { eg: '18 °C' }),
      ],
      'a temperature in °C, or off',
      'What the thermostat of the room is set to while the rule holds',
      { eg: '18 °C' },
    ).optional(),
    room: text('Name of the room whose thermostat is set', {
      eg: 'bedroom',
      otherwise: 'that of the rule',
    }).optional(),
    'open share': openShare().optional(),
    lasts: quantity('min', { above: 0, max: 1440 }, 'How long the window stays open, or shut', {
      eg: '10 min',
      otherwise: `${AIRING.lasts.value} open, ${ACTING.closedFor.value} shut`,
    }).optional(),
    probability: quantity('-', { min: 0, max: 1 }, 'Chance that somebody who is asked does it', {
      usual: ACTING.probability,
    }).optional(),
    delay: quantity('min', { min: 0, max: 1440 }, 'Delay from being told to doing it', {
      usual: ACTING.delay,
    }).optional(),
  },
  'One thing to do: a message, a lamp, a device, a window or a thermostat',
  { eg: { tell: 'open a window' } },
).superRefine((given, context) => {
  const deeds = DEEDS.filter((deed) => given[deed] !== undefined);
  const say = (message: string, ...path: string[]) =>
    context.addIssue({ code: 'custom', message, path });
  if (deeds.length !== 1) say(`exactly one of: ${DEEDS.join(', ')}`);
  const atWindow = given.open !== undefined || given.close !== undefined;
  for (const key of ['open share', 'lasts', 'probability', 'delay'] as const) {
    const belongs = key === 'open share' ? given.open !== undefined : atWindow;
    if (given[key] !== undefined && !belongs) say(`${key} only beside open or close`, key);
  }
  if (given.setpoint === undefined && given.room !== undefined) {
    say('a room only beside setpoint', 'room');
  }
});

/** @param species  whose levels conditions may read */
export const ruleModel = (species: readonly KnownSpecies[]) =>
  section(
    {
      name: text('Name of the rule, for tables', { eg: 'damp air' }),
      when: conditions(
        'Conditions, all of which must be met for the rule',
        species,
        'of the rule',
        {
          eg: [{ room: 'bedroom', reading: 'humidity', over: 70, clear: 60 }],
        },
      ).refine((all) => all.length > 0, {
        error: 'at least one condition',
      }),
      rooms: either(
        [
          choice(
            ['all', 'where somebody is'],
            'Every room; or every room while its presence sensor sees somebody',
          ),
          list(text('Name of a room', { eg: 'bedroom' }), ROOMS_WORDS, 'Rooms').refine(
            (all) => all.length > 0,
            {
              error: 'at least one room',
            },
          ),
        ],
        ROOMS_WORDS,
        'Rooms, each of which gets the rule and is meant wherever no room is named',
        { eg: ['living', 'bedroom'], otherwise: 'one rule for the home' },
      ).optional(),
      'on delay': quantity(
        'min',
        { min: 0, max: 10_080 },
        'How long the conditions must have held before the rule fires',
        { eg: '10 min', usual: 0 },
      ).optional(),
      gate: gate(
        'Presence or closed windows, in the room of the first condition, without which the rule does not fire',
      ).optional(),
      'quiet hours': hours('When the rule tells nobody, after which it tells what is still so', {
        eg: '22:00-07:00',
        otherwise: 'never',
      }).optional(),
      'most a day': plainNumber(
        { min: 1, max: 1000, whole: true },
        'Most messages of the rule in a day, of all its rooms together',
        { eg: 4, otherwise: 'no limit' },
      ).optional(),
      'repeat after': quantity(
        'min',
        { min: 1, max: 10_080 },
        'How long after a message the rule tells again, while it stays active',
        { eg: '2 h', otherwise: 'never' },
      ).optional(),
      response: list(
        actionModel,
        'a list of things to do, such as [{ tell: open a window }]',
        'What the rule does once it fires',
      ).refine((all) => all.length > 0, { error: 'at least one thing to do' }),
    },
    'One rule, whose response follows once all conditions have held for the on delay',
    {
      eg: {
        name: 'damp air',
        when: [{ room: 'bedroom', reading: 'humidity', over: 70 }],
        response: [{ tell: 'open a window' }],
      },
    },
  );

const ROOMS_WORDS = 'all, where somebody is, or a list of rooms';

export type ActionData = z.output<typeof actionModel>;
