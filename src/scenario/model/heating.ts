import { hours, spellShape } from './clock-fields.ts';
import { choice, either, list, named, plainNumber, quantity, section } from './fields.ts';
import { thermostatShape } from './thermostat.ts';

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
  ...thermostatShape,
};

const POWER_WORDS = 'a power in W, or a list of { outdoor, power }';
const WATER_WORDS = 'a temperature in °C, or a list of { outdoor, water }';
const outdoor = quantity('°C', { min: -40, max: 40 }, 'Outdoor temperature');
const mostPower = quantity('W', { above: 0, max: 1e6 }, 'Most that all emitters can draw');
const water = quantity('°C', { min: 20, max: 95 }, 'Mean, in the emitters');

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
              outdoor,
              water: water.optional(),
              cop: plainNumber({ above: 0, max: 12 }, 'Heat over electricity there'),
            },
            'One point',
          ),
          'a number, or a list of { outdoor, water, cop }',
          'By outdoor temperature, rising, and water temperature where it is known',
        ),
      ],
      'a number, or a list of { outdoor, water, cop }',
      'Heat over electricity of a heat pump',
    ).optional(),
    power: either(
      [
        mostPower,
        list(section({ outdoor, power: mostPower }, 'One point'), POWER_WORDS, 'By the weather'),
      ],
      POWER_WORDS,
      'Most that all emitters can draw, the same always or by outdoor temperature, rising',
    ).optional(),
    backup: quantity('W', { min: 0, max: 1e5 }, 'Electric heater that helps out').optional(),
    sharing: choice(
      ['in proportion', 'first come'],
      'Who goes short where power is not enough: all alike, or whoever asked last',
    ).optional(),
    'water temperature': either(
      [water, list(section({ outdoor, water }, 'One point'), WATER_WORDS, 'By the weather')],
      WATER_WORDS,
      'Of the water in the emitters, the same always or by outdoor temperature, rising',
    ).optional(),
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
