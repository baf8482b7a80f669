import type { Finding } from '../unplaced-problem.ts';
import { unknownRoom } from './room-names.ts';
import { mapping, roomNames, type UncheckedMapping } from './tolerant-readers.ts';

/** What does not go with one thermostat for the home: its room must exist, plain valves know no clock. */
export function oneThermostatFindings(raw: UncheckedMapping): Finding[] {
  const heating = mapping(raw['heating']);
  const room = heating['thermostat'];
  if (typeof room !== 'string') return [];
  const at = ['heating', 'thermostat'];
  const unknown = unknownRoom({ path: at, value: room }, roomNames(raw));
  if (unknown.length > 0) return unknown;
  const rooms = mapping(heating['rooms']);
  const { emitter } = mapping(raw['home'], 'rooms', room);
  if (rooms[room] === 'off' || emitter === 'none') {
    return [{ path: at, expected: 'a room that is heated, because its thermostat calls for all' }];
  }
  return Object.entries(rooms).flatMap(([name, own]) =>
    name === room
      ? []
      : Object.keys(mapping(own))
          .filter((key) => CLOCKED.includes(key))
          .map((key) => ({
            path: ['heating', 'rooms', name, key],
            expected: `nothing here: beside the thermostat in ${room} this room has a plain valve`,
            key: true,
          })),
  );
}

const CLOCKED = [
  'hours',
  'night',
  'setback',
  'gate',
  'hold off',
  'lead',
  'window lock-out',
  'deadband',
];
