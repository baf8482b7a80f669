import { hours } from './clock-fields.ts';
import { choice, either, list, named, plainNumber, quantity, section, text } from './fields.ts';
import { gate } from './gate.ts';
import { degrees, setpointField } from './setpoint-field.ts';

const COOLING_SOURCES = ['split', 'single duct', 'reversible heat pump', 'ideal', 'none'] as const;

const programme = {
  setpoint: setpointField(
    'One setpoint that holds whenever cooling is on',
    'Setpoints by the clock; outside all of them nothing is cooled',
  ).optional(),
  hours: hours('When the setpoint holds; outside it nothing is cooled').optional(),
  gate: gate('When the setpoint holds; otherwise nothing is cooled').optional(),
  power: quantity(
    'W',
    { above: 0, max: 1e5 },
    'Most heat that is removed from a room, with the heat of the water',
  ).optional(),
};

const EER_WORDS = 'a number, or a list of { outdoor, eer }';
const eerLimits = { above: 0, max: 20 };

const ROOMS_WORDS = 'all, a list of rooms, or a mapping from room names to settings';

export const coolingModel = section(
  {
    source: choice(COOLING_SOURCES, 'What takes heat out of rooms').optional(),
    eer: either(
      [
        plainNumber(eerLimits, 'One EER that holds in all weather'),
        list(
          section(
            {
              outdoor: quantity('°C', { min: -40, max: 60 }, 'Outdoor temperature'),
              eer: plainNumber(eerLimits, 'EER at this outdoor temperature'),
            },
            'One point',
          ),
          EER_WORDS,
          'EER by rising outdoor temperature',
        ),
      ],
      EER_WORDS,
      'Energy efficiency ratio: heat removed, water included, over electricity',
    ).optional(),
    ...programme,
    'power per area': quantity(
      'W/m2',
      { above: 0, max: 500 },
      'Most heat that emitters of a reversible heat pump remove for a square metre of floor, where no power is given',
    ).optional(),
    coil: section(
      {
        temperature: quantity(
          '°C',
          { min: 0, max: 20 },
          'Apparatus dew point: surface of the coil that air is blown over',
        ).optional(),
        'bypass factor': quantity(
          '-',
          { min: 0, max: 0.9 },
          'Share of the air that passes the coil untouched',
        ).optional(),
        airflow: quantity(
          'm3/h',
          { above: 0, max: 20_000 },
          'Air over the coil of one unit at full output',
        ).optional(),
      },
      'The coil of a unit',
    ).optional(),
    exhaust: quantity(
      'm3/h',
      { min: 0, max: 2000 },
      'Room air that a unit with a single duct blows outdoors at full output',
    ).optional(),
    rooms: either(
      [
        choice(['all'], 'Every room'),
        list(text('Name of a room'), ROOMS_WORDS, 'Only these rooms, all alike'),
        named(
          either(
            [
              degrees('Its own setpoint, at the same hours'),
              choice(['off'], 'Not cooled'),
              section(programme, 'Its own programme'),
            ],
            'a temperature in °C, off, or a mapping with setpoint, hours, gate, power',
            'One room',
          ),
          ROOMS_WORDS,
          'Rooms that are cooled otherwise than the rest',
        ),
      ],
      ROOMS_WORDS,
      'Which rooms are cooled; those lived or slept in where not given',
    ).optional(),
  },
  'What cools rooms and when it is wanted',
);
