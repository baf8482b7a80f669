import type { Finding } from '../unplaced-problem.ts';
import type { Path } from '../yaml/place-of.ts';
import { everyAt, type PlacedValue, roomNames, type UncheckedMapping } from './tolerant-readers.ts';

/** Every name of a room that is used somewhere must be the name of a room. */
export function roomNameFindings(raw: UncheckedMapping): Finding[] {
  const names = roomNames(raw);
  return [
    ...everyAt(raw, ...NAMED).flatMap((one) => unknownRoom(one, names)),
    ...everyAt(raw, ...KEYED).flatMap(({ path }) => unknownRoomKey(path, names)),
    ...ofItself(raw),
    ...doorwayFindings(raw),
  ];
}

/** A name that no room has; what is no text is the model's business. */
export const unknownRoom = ({ path, value }: PlacedValue, names: readonly string[]): Finding[] =>
  typeof value !== 'string' || names.includes(value)
    ? []
    : [{ path, expected: `the name of a room: ${names.join(', ')}`, names }];

/** A key that is the name of no room. */
export function unknownRoomKey(path: Path, names: readonly string[]): Finding[] {
  const got = JSON.stringify(path.at(-1));
  return unknownRoom({ path, value: path.at(-1) }, names).map((finding) => ({
    ...{ ...finding, got, key: true },
  }));
}

/** Rooms that lie over themselves, or have a wall to themselves. */
function ofItself(raw: UncheckedMapping): Finding[] {
  return everyAt(raw, 'home/rooms/*/elements/#/to/room', 'home/rooms/*/over')
    .filter(({ path, value }) => value === path[2])
    .map(({ path }) => ({ path, expected: 'another room' }));
}

function doorwayFindings(raw: UncheckedMapping): Finding[] {
  return everyAt(raw, 'home/doorways/#/between').flatMap(({ path, value }): Finding[] => {
    if (!Array.isArray(value)) return [];
    if (value.length !== 2) return [{ path, expected: 'the names of two rooms' }];
    if (value[0] !== value[1]) return [];
    return [{ path: [...path, 1], expected: `another room than ${value[0]}` }];
  });
}

/** Where a room is named. */
const NAMED = [
  'home/rooms/*/over',
  'home/rooms/*/elements/#/to/room',
  'home/doorways/#/between/#',
  'cooling/rooms/#',
  'blinds/#/room',
  'blinds/#/rooms/#',
  'household/people/#/sleeps in',
  'household/people/#/lives in',
  'household/people/#/lives in/#/room',
  'household/people/#/works in',
  'household/people/#/schedule/#/room',
  'household/guests/#/room',
  'household/activities/#/room',
  'household/airing/#/room',
  'household/airing/#/rooms/#',
];
/** Where names of rooms are keys. */
const KEYED = ['heating/rooms/*', 'cooling/rooms/*'];
