import { hours, spellShape } from './clock-fields.ts';
import { EMITTER_FIELDS } from './emitter-fields.ts';
import { choice, either, list, named, plainNumber, quantity, section, text } from './fields.ts';
import { holidaySetbackField, seasonField } from './heating-season.ts';
import { degrees, setpointField } from './setpoint-field.ts';
import { thermostatShape } from './thermostat.ts';

const HEAT_SOURCES = ['boiler', 'direct electric', 'heat pump', 'district heat', 'none'] as const;

const programme = {
  setpoint: setpointField(
    'One setpoint that holds whenever heating is on',
    'Setpoints by the clock; outside all of them the setback holds',
  ).optional(),
  hours: hours('When the setpoint holds; outside it the setback does').optional(),
  setback: degrees(
    'Temperature kept outside the hours; the frost guard where not given',
  ).optional(),
  night: section(
    {
      setpoint: degrees('Temperature kept at night'),
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
const water = quantity('°C', { min: 20, max: 95 }, 'Mean water temperature in the emitters');

export const heatingModel = section(
  {
    source: choice(HEAT_SOURCES, 'What makes the heat').optional(),
    fuel: choice(['gas', 'oil', 'lpg', 'wood'], 'What a boiler burns').optional(),
    efficiency: quantity(
      '-',
      { above: 0, max: 1.1 },
      'Useful heat over fuel, gross calorific value',
    ).optional(),
    cop: either(
      [
        plainNumber({ above: 0, max: 12 }, 'One COP that holds in all weather'),
        list(
          section(
            {
              outdoor,
              water: water.optional(),
              cop: plainNumber({ above: 0, max: 12 }, 'COP at this outdoor temperature'),
            },
            'One point',
          ),
          'a number, or a list of { outdoor, water, cop }',
          'COP by rising outdoor temperature, and by water temperature where it is known',
        ),
      ],
      'a number, or a list of { outdoor, water, cop }',
      'Heat over electricity of a heat pump',
    ).optional(),
    power: either(
      [
        mostPower,
        list(
          section({ outdoor, power: mostPower }, 'One point'),
          POWER_WORDS,
          'Power by outdoor temperature',
        ),
      ],
      POWER_WORDS,
      'Most that all emitters can draw, one value or by rising outdoor temperature',
    ).optional(),
    backup: quantity('W', { min: 0, max: 1e5 }, 'Electric backup heater').optional(),
    sharing: choice(
      ['in proportion', 'first come'],
      'Who goes short where power is not enough: all alike, or whoever asked last',
    ).optional(),
    'water temperature': either(
      [
        water,
        list(
          section({ outdoor, water }, 'One point'),
          WATER_WORDS,
          'Water temperature by outdoor temperature',
        ),
      ],
      WATER_WORDS,
      'Mean temperature of the water in the emitters, one value or by rising outdoor temperature',
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
        exponent: plainNumber(
          { min: 1, max: 2 },
          'Exponent of output over excess temperature',
        ).optional(),
        ...EMITTER_FIELDS,
      },
      'What holds for every radiator or heater that does not say otherwise',
    ).optional(),
    ...programme,
    season: seasonField.optional(),
    'holiday setback': holidaySetbackField.optional(),
    thermostat: text(
      'Room of the only thermostat: it calls for heat for the whole home, all other rooms have plain valves',
    ).optional(),
    'frost guard': degrees('Temperature kept even when heating is off').optional(),
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
