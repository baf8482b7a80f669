import {
  BOILER_EFFICIENCY,
  ELECTRIC_HEATER,
  FROST_GUARD,
  RADIATOR,
  RADIATOR_EXCESS,
  RADIATOR_EXPONENT,
  SETPOINT,
  WATER,
} from '../presets/heating.ts';
import { hours, spellShape } from './clock-fields.ts';
import { EMITTER_FIELDS } from './emitter-fields.ts';
import {
  asInHome,
  choice,
  either,
  list,
  named,
  plainNumber,
  quantity,
  section,
  text,
  told,
} from './fields.ts';
import { holidaySetbackField, seasonField } from './heating-season.ts';
import { degrees, setpointField } from './setpoint-field.ts';
import { thermostatShape } from './thermostat.ts';

const HEAT_SOURCES = ['boiler', 'direct electric', 'heat pump', 'district heat', 'none'] as const;

const programme = {
  setpoint: setpointField(
    'Temperature that the room is heated to while the programme holds',
    'One setpoint that holds whenever heating is on',
    'Setpoints by the clock, outside all of which the setback holds',
    { usual: SETPOINT },
  ).optional(),
  hours: hours('When the setpoint holds, outside which the setback does', {
    usual: 'always',
  }).optional(),
  setback: degrees('Temperature that is kept outside the hours', {
    eg: '16 °C',
    otherwise: 'the frost guard',
  }).optional(),
  night: section(
    {
      setpoint: degrees('Highest temperature that is kept at night', { eg: '17 °C' }),
      ...spellShape,
    },
    'A lower setting at night, on top of everything else',
    { eg: { setpoint: '17 °C', from: '22:30', to: '06:30' }, otherwise: 'none' },
  ).optional(),
  ...thermostatShape,
};

const POWER_WORDS = 'a power in W, or a list of { outdoor, power }';
const WATER_WORDS = 'a temperature in °C, or a list of { outdoor, water }';
const outdoor = quantity('°C', { min: -40, max: 40 }, 'Outdoor temperature of this point', {
  eg: '7 °C',
});
const mostPower = quantity(
  'W',
  { above: 0, max: 1e6 },
  'Most heat that all emitters together can draw',
  { eg: '8000 W' },
);
const water = quantity('°C', { min: 20, max: 95 }, 'Mean water temperature in the emitters', {
  eg: '45 °C',
});

export const heatingModel = section(
  {
    source: choice(HEAT_SOURCES, 'What makes the heat of the home', { usual: 'boiler' }).optional(),
    fuel: choice(['gas', 'oil', 'lpg', 'wood'], 'What a boiler burns', { usual: 'gas' }).optional(),
    efficiency: quantity(
      '-',
      { above: 0, max: 1.1 },
      'Useful heat over the energy of the fuel, gross calorific value',
      { eg: 0.84, otherwise: `${BOILER_EFFICIENCY.value} for a boiler, 1 for other sources` },
    ).optional(),
    cop: either(
      [
        plainNumber({ above: 0, max: 12 }, 'One COP that holds in all weather', { eg: 3 }),
        list(
          section(
            {
              outdoor,
              water: told(water, 'Mean water temperature in the emitters, of this point', {
                eg: '45 °C',
                otherwise: 'any',
              }).optional(),
              cop: plainNumber({ above: 0, max: 12 }, 'COP at this outdoor temperature', {
                eg: 2.9,
              }),
            },
            'One point',
          ),
          'a number, or a list of { outdoor, water, cop }',
          'COP by rising outdoor temperature, and by water temperature where it is known',
        ),
      ],
      'a number, or a list of { outdoor, water, cop }',
      'Coefficient of performance (COP) of a heat pump: heat over electricity',
      {
        eg: [
          { outdoor: -7, cop: 2.1 },
          { outdoor: 7, cop: 3 },
        ],
        otherwise: 'a usual one, by outdoor and water temperature',
      },
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
      'Most heat that all emitters together can draw, one value or by rising outdoor temperature',
      { eg: '8000 W', otherwise: 'usual for the source' },
    ).optional(),
    backup: quantity(
      'W',
      { min: 0, max: 1e5 },
      'Power of the electric backup heater of a heat pump',
      { eg: '3000 W', usual: 0 },
    ).optional(),
    sharing: choice(
      ['in proportion', 'first come'],
      'Who goes short where power is not enough: all in proportion, or whoever asked last',
      { usual: 'in proportion' },
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
      {
        eg: '45 °C',
        otherwise: `${WATER.boiler.value} for a boiler, ${WATER['heat pump'].value} for a heat pump, ${WATER['district heat'].value} for district heat`,
      },
    ).optional(),
    emitters: section(
      {
        'power per area': quantity(
          'W/m2',
          { min: 0, max: 1000 },
          'Rated output of emitters for a square metre of floor',
          {
            eg: 110,
            otherwise: `${RADIATOR.value} for radiators, ${ELECTRIC_HEATER.value} for electric heaters`,
          },
        ).optional(),
        excess: quantity(
          'K',
          { min: 0, max: 80 },
          'Mean water over room temperature at which the power of emitters is rated',
          { usual: RADIATOR_EXCESS },
        ).optional(),
        exponent: plainNumber(
          { min: 1, max: 2 },
          'Exponent of output over excess temperature of emitters with water',
          { usual: RADIATOR_EXPONENT },
        ).optional(),
        ...EMITTER_FIELDS,
      },
      'What holds for every radiator or heater that does not say otherwise',
      { eg: { 'power per area': 80 }, otherwise: 'the usual' },
    ).optional(),
    ...programme,
    season: seasonField.optional(),
    'holiday setback': holidaySetbackField.optional(),
    thermostat: text(
      'Name of the room of the only thermostat, which calls for heat for the whole home, where all other rooms have plain valves',
      { eg: 'hall', otherwise: 'a thermostat in every room' },
    ).optional(),
    'frost guard': degrees('Temperature kept even when heating is off', {
      usual: FROST_GUARD,
    }).optional(),
    rooms: named(
      either(
        [
          degrees('Setpoint of the room, at the hours of the home', { eg: '18 °C' }),
          choice(['off'], 'Only the frost guard'),
          section(asInHome(programme), 'A programme of the room’s own', {
            eg: { setpoint: '18 °C', hours: '06:30-22:30' },
          }),
        ],
        'a temperature in °C, off, or a mapping with setpoint, hours, setback, night',
        'One room',
      ),
      'a mapping from room names to settings',
      'Rooms that are heated otherwise than the rest',
      { eg: { bedroom: '17 °C', storage: 'off' }, otherwise: 'all alike' },
    ).optional(),
  },
  'What makes the heat, how it gets into rooms, and when it is wanted',
  { eg: { source: 'boiler', setpoint: '20 °C' }, otherwise: 'a gas boiler and radiators' },
);
