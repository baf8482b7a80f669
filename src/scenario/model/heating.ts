import { hours, spellShape } from './clock-fields.ts';
import { choice, either, list, named, plainNumber, quantity, section } from './fields.ts';

const HEAT_SOURCES = ['boiler', 'direct electric', 'heat pump', 'district heat', 'none'] as const;

const degrees = (says: string) => quantity('°C', { min: -10, max: 40 }, says);

const setpoint = either(
  [
    degrees('The same whenever heating is on'),
    list(
      section({ ...spellShape, setpoint: degrees('While it lasts') }, 'A stretch of local time'),
      'a temperature, or a list of { days, months, from, to, setpoint }',
      'By the clock; outside all of them the setback holds',
    ),
  ],
  'a temperature in °C, or a list of { days, months, from, to, setpoint }',
  'What the thermostat is set to',
);

const programme = {
  setpoint: setpoint.optional(),
  hours: hours('When the setpoint holds; outside it the setback does').optional(),
  setback: degrees('What is kept outside the hours; the frost guard where not given').optional(),
  night: section(
    {
      setpoint: degrees('What is kept at night'),
      ...spellShape,
    },
    'A lower setting at night, on top of everything else',
  ).optional(),
};

export const heatingModel = section(
  {
    source: choice(HEAT_SOURCES, 'What makes the heat').optional(),
    fuel: choice(['gas', 'oil', 'lpg', 'wood'], 'What a boiler burns').optional(),
    efficiency: quantity('-', { above: 0, max: 1.1 }, 'Useful heat over fuel, gross').optional(),
    cop: either(
      [
        plainNumber({ above: 0, max: 12 }, 'The same in all weather'),
        list(
          section(
            {
              outdoor: quantity('°C', { min: -40, max: 40 }, 'Outdoor temperature'),
              cop: plainNumber({ above: 0, max: 12 }, 'Heat over electricity there'),
            },
            'One point',
          ),
          'a number, or a list of { outdoor, cop }',
          'By outdoor temperature, rising',
        ),
      ],
      'a number, or a list of { outdoor, cop }',
      'Heat over electricity of a heat pump',
    ).optional(),
    power: quantity('W', { above: 0, max: 1e6 }, 'Most that all emitters can draw').optional(),
    'water temperature': quantity('°C', { min: 20, max: 95 }, 'Mean, in the emitters').optional(),
    emitters: section(
      {
        'power per area': quantity(
          'W/m2',
          { min: 0, max: 1000 },
          'Rated output for a square metre of floor',
        ).optional(),
        excess: quantity(
          'K',
          { min: 0, max: 80 },
          'Mean water over room temperature at which power is rated',
        ).optional(),
        exponent: plainNumber({ min: 1, max: 2 }, 'Of output on excess').optional(),
        'radiant share': quantity('-', { min: 0, max: 1 }, 'Share that warms surfaces').optional(),
        lag: quantity('min', { min: 0, max: 1440 }, 'Time constant of warming up').optional(),
      },
      'What holds for every radiator or heater that does not say otherwise',
    ).optional(),
    ...programme,
    'frost guard': degrees('Kept even when heating is off').optional(),
    rooms: named(
      either(
        [
          degrees('Its own setpoint, at the same hours'),
          choice(['off'], 'Only the frost guard'),
          section(programme, 'Its own programme'),
        ],
        'a temperature in °C, off, or a mapping with setpoint, hours, setback, night',
        'One room',
      ),
      'a mapping from room names to settings',
      'Rooms that are heated otherwise',
    ).optional(),
  },
  'What makes the heat and when it is wanted',
);
