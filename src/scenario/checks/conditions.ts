import type { Finding } from '../unplaced-problem.ts';
import type { Path } from '../yaml/place-of.ts';
import { hasSensor, sensorsOf } from './sensed.ts';
import { items, mapping, roomNames, type UncheckedMapping } from './tolerant-readers.ts';

/** Rooms and sensors that a list of conditions names must exist. */
export function conditionFindings(raw: UncheckedMapping, value: unknown, path: Path): Finding[] {
  const names = roomNames(raw);
  return items(value).flatMap((condition, k): Finding[] => {
    const { room } = mapping(condition);
    if (typeof room !== 'string') return [];
    const at = [...path, k, 'room'];
    if (!names.includes(room) && room !== 'outdoors') {
      const expected = `the name of a room: ${names.join(', ')}; or outdoors`;
      return [{ path: at, expected, names: [...names, 'outdoors'] }];
    }
    const outside =
      room === 'outdoors' && (mapping(condition)['windows'] ?? mapping(condition)['presence']);
    if (outside !== undefined && outside !== false) return [{ path: at, expected: 'a room' }];
    return missingSensors(raw, room, sensorsOf(condition), at);
  });
}

/** Sensors that something goes by in a room that has none. */
export function missingSensors(
  raw: UncheckedMapping,
  room: string,
  kinds: readonly string[],
  path: Path,
): Finding[] {
  return kinds
    .filter((kind) => !hasSensor(raw, room, kind))
    .map((kind) => ({ path, expected: `a ${kind} sensor in ${room}`, got: 'none there' }));
}
