import type { Finding } from '../unplaced-problem.ts';
import { isMapping } from '../yaml/merge-patch.ts';
import { items, mapping, type UncheckedMapping } from './tolerant-readers.ts';

/** Rooms that were given no way out: no doorway, no window and no element that heat passes. */
export function cutOffFindings(raw: UncheckedMapping): Finding[] {
  const home = mapping(raw['home']);
  if (!Array.isArray(home['doorways'])) return [];
  const joined = items(home['doorways']).flatMap((doorway) => items(mapping(doorway)['between']));
  const rooms = Object.entries(mapping(home['rooms']));
  const reached = rooms.flatMap(([, room]) =>
    items(mapping(room)['elements']).map((element) => mapping(mapping(element)['to'])['room']),
  );
  return rooms.flatMap(([name, room]): Finding[] => {
    const { elements, panes } = mapping(room);
    const shut =
      Array.isArray(elements) && elements.every(passesNothing) && items(panes).length === 0;
    if (!shut || joined.includes(name) || reached.includes(name)) return [];
    const expected = 'a doorway, a window or a wall that heat passes';
    return [{ path: ['home', 'rooms', name], expected, got: 'a room cut off from everything' }];
  });
}

const passesNothing = (element: unknown): boolean => {
  const { to, kind } = mapping(element);
  return isMapping(element) && (to === 'nothing' || (to === undefined && kind === 'partition'));
};
