import type { Finding } from '../unplaced-problem.ts';
import { isMapping } from '../yaml/merge-patch.ts';
import { everyAt, items, mapping, type UncheckedMapping } from './tolerant-readers.ts';

/** Rooms that were given no way out: no doorway, no window and no element that heat passes. */
export function cutOffFindings(raw: UncheckedMapping): Finding[] {
  if (!Array.isArray(mapping(raw['home'])['doorways'])) return [];
  const joined = everyAt(raw, 'home/doorways/#/between/#', 'home/rooms/*/elements/#/to/room');
  const reached = joined.map(({ value }) => value);
  return everyAt(raw, 'home/rooms/*').flatMap(({ path, value }): Finding[] => {
    const { elements, panes } = mapping(value);
    const shut =
      Array.isArray(elements) && elements.every(passesNothing) && items(panes).length === 0;
    if (!shut || reached.includes(path.at(-1))) return [];
    const expected = 'a doorway, a window or a wall that heat passes';
    return [{ path, expected, got: 'a room cut off from everything' }];
  });
}

const passesNothing = (element: unknown): boolean => {
  const { to, kind } = mapping(element);
  return isMapping(element) && (to === 'nothing' || (to === undefined && kind === 'partition'));
};
