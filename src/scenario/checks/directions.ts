import type { Finding } from '../unplaced-problem.ts';
import { isMapping } from '../yaml/merge-patch.ts';
import {
  everyAt,
  items,
  mapping,
  readTolerantly,
  type UncheckedMapping,
} from './tolerant-readers.ts';

/**
 * Walls, panes and openings that do not say where they look while others of their room do, and the room
 * itself does not: wind blows air in on one side of a home and out on another, so a guess would decide.
 */
export function directionFindings(raw: UncheckedMapping): Finding[] {
  return everyAt(raw, 'home/rooms/*').flatMap(({ path, value }): Finding[] => {
    const room = mapping(value);
    if ('faces' in room) return [];
    return LISTS.flatMap(({ key, called }): Finding[] => {
      const parts = items(room[key]).map((part, k) => ({ part, k }));
      const upright = parts.filter(({ part }) => isMapping(part) && looksSomewhere(part));
      if (!upright.some(({ part }) => 'faces' in mapping(part))) return [];
      return upright
        .filter(({ part }) => !('faces' in mapping(part)))
        .map(({ k }) => ({
          path: [...path, key, k],
          expected: `faces, as other ${called} of the room have it`,
          got: 'none',
        }));
    });
  });
}

/** False for what has air of no direction beyond it: inner elements, floors, roofs, panes that face up. */
function looksSomewhere(part: UncheckedMapping): boolean {
  if ('kind' in part && part['kind'] !== 'wall') return false;
  if ('to' in part && part['to'] !== 'outdoors') return false;
  return readTolerantly(part['tilt'] ?? 90, 'deg') !== 0;
}

const LISTS = [
  { key: 'outer walls', called: 'outer walls' },
  { key: 'elements', called: 'walls' },
  { key: 'panes', called: 'panes' },
  { key: 'openings', called: 'openings' },
] as const;
