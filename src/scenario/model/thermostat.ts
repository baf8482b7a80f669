import { THERMOSTAT } from '../presets/control.ts';
import { choice, either, quantity, type Shown, section } from './fields.ts';
import { gate } from './gate.ts';

const minutes = (says: string, more: Shown) => quantity('min', { min: 0, max: 1440 }, says, more);

/** How the thermostat of a room works: for the whole home, or for one room. */
export const thermostatShape = {
  gate: gate(
    'Presence or closed windows without which the setback holds instead of the programme',
  ).optional(),
  'hold off': minutes(
    'How long the programme goes on after the gate shuts, where it goes by presence',
    { usual: THERMOSTAT.holdOff },
  ).optional(),
  lead: either(
    [
      choice(['none', 'learned'], 'No lead, or one learned from how the room warmed up before'),
      minutes('Fixed lead', { eg: '45 min' }),
    ],
    'none, learned, or a time such as 45 min',
    'How early heating starts before the programme rises or somebody usually comes',
    { eg: '45 min', usual: 'none' },
  ).optional(),
  'longest lead': minutes('Longest lead that a thermostat which learns it takes', {
    usual: THERMOSTAT.longestLead,
  }).optional(),
  'window lock-out': either(
    [
      choice(['never'], 'Windows do not matter'),
      minutes('How long after a window was opened', { eg: '2 min' }),
    ],
    'never, or a time such as 2 min',
    'How long after a window of the room was opened heating stops, until it is shut',
    { eg: '2 min', usual: 'never' },
  ).optional(),
  sensor: either(
    [
      choice(['remote', 'on the valve'], 'Place of the sensor'),
      section(
        {
          place: choice(['remote', 'on the valve'], 'Where the sensor of the thermostat is', {
            usual: 'remote',
          }).optional(),
          'radiant share': quantity(
            '-',
            { min: 0, max: 1 },
            'Share of the surfaces around it in what the sensor feels, the rest of the air',
            { usual: THERMOSTAT.radiantShare },
          ).optional(),
          bias: quantity(
            'K',
            { min: -10, max: 10 },
            'By how much the sensor always reads too warm',
            { usual: 0 },
          ).optional(),
          'at full output': quantity(
            'K',
            { min: 0, max: 15 },
            'By how much more the sensor reads while the emitter gives its most',
            { eg: '2 K', otherwise: `${THERMOSTAT.valveBias.value} on the valve, 0 elsewhere` },
          ).optional(),
        },
        'Place and errors of the sensor',
        { eg: { place: 'on the valve' } },
      ),
    ],
    'remote, on the valve, or a mapping with place, radiant share, bias, at full output',
    'Where the sensor of the thermostat is, and how it errs',
    { eg: 'on the valve', usual: 'remote' },
  ).optional(),
  'proportional band': quantity(
    'K',
    { min: 0, max: 10 },
    'How far below the setting emitters are fully open, 0 where it is held exactly (proportional band)',
    {
      eg: '1 K',
      otherwise: `${THERMOSTAT.plainValve.value} for plain valves beside one thermostat, else 0`,
    },
  ).optional(),
  deadband: quantity(
    'K',
    { min: 0, max: 10 },
    'Distance between the temperatures of switching on and off, half of it on each side of the setting (deadband)',
    {
      eg: '1 K',
      otherwise: `${THERMOSTAT.deadband.value} for the one thermostat of a home, else 0`,
    },
  ).optional(),
};
