import type * as z from 'zod';
import type { KnownSpecies } from '../../species/species-table.ts';
import { hours } from './clock-fields.ts';
import { conditions } from './condition.ts';
import { choice, either, list, plainNumber, quantity, section, text } from './fields.ts';
import { gate } from './gate.ts';

const DEEDS = ['tell', 'lamp', 'run', 'stop', 'open', 'close', 'setpoint'] as const;

const actionModel = section(
  {
    tell: text('What people are told').optional(),
    lamp: text('What a lamp shows').optional(),
    run: text('Name of a device, run while the rule holds').optional(),
    stop: text('Name of a device, stopped while the rule holds').optional(),
    open: text('Room or opening, or here; somebody home and awake opens it').optional(),
    close: text('Room or opening, or here; somebody home and awake closes it').optional(),
    setpoint: either(
      [choice(['off'], 'Only the frost guard'), quantity('°C', { min: -10, max: 40 }, 'A setting')],
      'a temperature in °C, or off',
      'What the thermostat of the room is set to while the rule holds',
    ).optional(),
    room: text('Room whose setpoint is set').optional(),
    'open share': quantity('-', { above: 0, max: 1 }, 'Share of the full opening').optional(),
    lasts: quantity('min', { above: 0, max: 1440 }, 'How long it stays so').optional(),
    probability: quantity('-', { min: 0, max: 1 }, 'Chance that somebody does it').optional(),
    delay: quantity('min', { min: 0, max: 1440 }, 'Delay from being told to doing it').optional(),
  },
  'One thing to do',
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
      name: text('For tables'),
      when: conditions('Conditions, all of which must be met', species, 'of the rule').refine(
        (all) => all.length > 0,
        {
          error: 'at least one condition',
        },
      ),
      rooms: either(
        [
          choice(
            ['all', 'where somebody is'],
            'Every room; or every room while its presence sensor sees somebody',
          ),
          list(text('Name of a room'), ROOMS_WORDS, 'Rooms').refine((all) => all.length > 0, {
            error: 'at least one room',
          }),
        ],
        ROOMS_WORDS,
        'One rule in each of these rooms, which is meant wherever no room is named',
      ).optional(),
      'on delay': quantity(
        'min',
        { min: 0, max: 10_080 },
        'How long the conditions must have held before it fires',
      ).optional(),
      gate: gate(
        'Gate: when the rule may fire; its room is that of the first condition',
      ).optional(),
      'quiet hours': hours(
        'When it tells nobody; what is still so at their end is told then',
      ).optional(),
      'most a day': plainNumber(
        { min: 1, max: 1000, whole: true },
        'Most messages in a day, of all its rooms together',
      ).optional(),
      'repeat after': quantity(
        'min',
        { min: 1, max: 10_080 },
        'Tells again so long after, while it stays active',
      ).optional(),
      response: list(actionModel, 'a list of things to do', 'Response: what the rule does').refine(
        (all) => all.length > 0,
        { error: 'at least one thing to do' },
      ),
    },
    'A rule: once all conditions have held for the on delay, this is the response',
  );

const ROOMS_WORDS = 'all, where somebody is, or a list of rooms';

export type ActionData = z.output<typeof actionModel>;
