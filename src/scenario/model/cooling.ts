import {
  COIL,
  COOLING_SETPOINT,
  DUCT_EXHAUST,
  EMITTER_COOLING,
  UNIT_POWER,
} from '../presets/cooling.ts';
import { hours } from './clock-fields.ts';
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
} from './fields.ts';
import { gate } from './gate.ts';
import { degrees, setpointField } from './setpoint-field.ts';

const COOLING_SOURCES = ['split', 'single duct', 'reversible heat pump', 'ideal', 'none'] as const;

const programme = {
  setpoint: setpointField(
    'Temperature that the room is cooled to',
    'One setpoint that holds whenever cooling is on',
    'Setpoints by the clock, outside all of which nothing is cooled',
    { usual: COOLING_SETPOINT },
  ).optional(),
  hours: hours('When the setpoint holds, outside which nothing is cooled', {
    usual: 'always',
  }).optional(),
  gate: gate('Presence or closed windows without which nothing is cooled').optional(),
  power: quantity(
    'W',
    { above: 0, max: 1e5 },
    'Most heat that is removed from a room, with the heat of the water',
    {
      eg: '2500 W',
      otherwise: `${UNIT_POWER.split.value} for room units, by floor area for a heat pump`,
    },
  ).optional(),
};

const EER_WORDS = 'a number, or a list of { outdoor, eer }';
const eerLimits = { above: 0, max: 20 };

const ROOMS_WORDS = 'all, a list of rooms, or a mapping from room names to settings';

export const coolingModel = section(
  {
    source: choice(COOLING_SOURCES, 'What takes heat out of rooms', { usual: 'split' }).optional(),
    eer: either(
      [
        plainNumber(eerLimits, 'One EER that holds in all weather', { eg: 3.3 }),
        list(
          section(
            {
              outdoor: quantity('°C', { min: -40, max: 60 }, 'Outdoor temperature of this point', {
                eg: '35 °C',
              }),
              eer: plainNumber(eerLimits, 'EER at this outdoor temperature', { eg: 2.8 }),
            },
            'One point',
          ),
          EER_WORDS,
          'EER by rising outdoor temperature',
        ),
      ],
      EER_WORDS,
      'Energy efficiency ratio (EER): heat removed, water included, over electricity',
      { eg: 3.3, otherwise: 'usual for the source, by outdoor temperature' },
    ).optional(),
    ...programme,
    'power per area': quantity(
      'W/m2',
      { above: 0, max: 500 },
      'Most heat that emitters of a reversible heat pump remove for a square metre of floor, where no power is given',
      { usual: EMITTER_COOLING },
    ).optional(),
    coil: section(
      {
        temperature: quantity(
          '°C',
          { min: 0, max: 20 },
          'Surface temperature of the coil that air is blown over (apparatus dew point)',
          { usual: COIL.temperature },
        ).optional(),
        'bypass factor': quantity(
          '-',
          { min: 0, max: 0.9 },
          'Share of the air that passes the coil untouched',
          { usual: COIL.bypassFactor },
        ).optional(),
        airflow: quantity(
          'm3/h',
          { above: 0, max: 20_000 },
          'Air over the coil of one unit at full output',
          { eg: 400, otherwise: `${COIL.airflowPerWatt.value} for each watt of power` },
        ).optional(),
      },
      'The coil of units that hang in rooms, which dries the air too',
      { eg: { temperature: '10 °C' }, otherwise: 'a usual one' },
    ).optional(),
    exhaust: quantity(
      'm3/h',
      { min: 0, max: 2000 },
      'Room air that a unit with a single duct blows outdoors at full output',
      { usual: DUCT_EXHAUST },
    ).optional(),
    rooms: either(
      [
        choice(['all'], 'Every room'),
        list(text('Name of a room', { eg: 'bedroom' }), ROOMS_WORDS, 'Only these rooms, all alike'),
        named(
          either(
            [
              degrees('Setpoint of the room, at the hours of the home', { eg: '25 °C' }),
              choice(['off'], 'Not cooled'),
              section(asInHome(programme), 'A programme of the room’s own', {
                eg: { setpoint: '25 °C' },
              }),
            ],
            'a temperature in °C, off, or a mapping with setpoint, hours, gate, power',
            'One room',
          ),
          ROOMS_WORDS,
          'Rooms that are cooled otherwise than the rest',
        ),
      ],
      ROOMS_WORDS,
      'Which rooms are cooled: all, a list, or settings by room',
      { eg: ['bedroom'], otherwise: 'those lived or slept in' },
    ).optional(),
  },
  'What cools rooms, and when it is wanted',
  { eg: { source: 'split', setpoint: '26 °C' }, otherwise: 'nothing' },
);
