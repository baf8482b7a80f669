import { choice, either, quantity, section } from './fields.ts';
import { gate } from './gate.ts';

const minutes = (says: string) => quantity('min', { min: 0, max: 1440 }, says);

/** How the thermostat of a room works: for the whole home, or for one room. */
export const thermostatShape = {
  gate: gate('When the programme holds; otherwise the setback does').optional(),
  'hold off': minutes('The programme goes on for so long after the gate shuts').optional(),
  lead: either(
    [
      choice(['none', 'learned'], 'No lead, or one learned from how the room warmed up before'),
      minutes('Fixed lead'),
    ],
    'none, learned, or a time such as 45 min',
    'How early heating starts before the programme rises or somebody usually comes',
  ).optional(),
  'longest lead': minutes('Never earlier than this, where it is learned').optional(),
  'window lock-out': either(
    [choice(['never'], 'Windows do not matter'), minutes('After so long')],
    'never, or a time such as 2 min',
    'Heating stops so long after a window of the room was opened, until it is shut',
  ).optional(),
  sensor: either(
    [
      choice(['remote', 'on the valve'], 'Place of the sensor'),
      section(
        {
          place: choice(['remote', 'on the valve'], 'Place of the sensor').optional(),
          'radiant share': quantity(
            '-',
            { min: 0, max: 1 },
            'Feels so much of the surfaces around it, the rest of the air; 0 is the air alone',
          ).optional(),
          bias: quantity('K', { min: -10, max: 10 }, 'Reads so much too warm, always').optional(),
          'at full output': quantity(
            'K',
            { min: 0, max: 15 },
            'Reads so much more while the emitter gives its most',
          ).optional(),
        },
        'Place and errors of the sensor',
      ),
    ],
    'remote, on the valve, or a mapping with place, radiant share, bias, at full output',
    'The sensor of the thermostat',
  ).optional(),
  'proportional band': quantity(
    'K',
    { min: 0, max: 10 },
    'Proportional band: emitters are fully open so far below the setting; 0 holds it exactly',
  ).optional(),
  deadband: quantity(
    'K',
    { min: 0, max: 10 },
    'Deadband: switches on half of it below the setting, off half of it above; 0 for none',
  ).optional(),
};
