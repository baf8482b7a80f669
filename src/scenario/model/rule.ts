import type { z } from 'zod';
import type { KnownSpecies } from '../../species/species-table.ts';
import { conditions } from './condition.ts';
import { choice, either, list, quantity, section, text } from './fields.ts';
import { gate } from './gate.ts';

const DEEDS = ['tell', 'lamp', 'run', 'stop', 'open', 'close', 'setpoint'] as const;

const actionModel = section(
  {
    tell: text('What people are told').optional(),
    lamp: text('What a lamp shows').optional(),
    run: text('Name of a device, run while the rule holds').optional(),
    stop: text('Name of a device, stopped while the rule holds').optional(),
    open: text('Room or opening; somebody home and awake opens it').optional(),
    close: text('Room or opening; somebody home and awake closes it').optional(),
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
  if (given.setpoint !== undefined && given.room === undefined) {
    const message = 'the room of the setpoint';
    context.addIssue({
      code: 'custom',
      message,
      path: ['setpoint'],
      params: { got: 'a setpoint alone' },
    });
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
      when: conditions('Conditions, all of which must be met', species).refine(
        (all) => all.length > 0,
        {
          error: 'at least one condition',
        },
      ),
      'on delay': quantity(
        'min',
        { min: 0, max: 10_080 },
        'How long the conditions must have held before it fires',
      ).optional(),
      gate: gate(
        'Gate: when the rule may fire; its room is that of the first condition',
      ).optional(),
      response: list(actionModel, 'a list of things to do', 'Response: what the rule does').refine(
        (all) => all.length > 0,
        { error: 'at least one thing to do' },
      ),
    },
    'A rule: once all conditions have held for the on delay, this is the response',
  );

export type ActionData = z.output<typeof actionModel>;
