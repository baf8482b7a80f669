import type { Finding } from '../unplaced-problem.ts';
import { everyAt, mapping, readTolerantly, type UncheckedMapping } from './tolerant-readers.ts';

/** Parts of floors and ceilings said to be exposed that are larger than these, or of what is exposed, or drawn, as a whole. */
export function exposedPartFindings(raw: UncheckedMapping): Finding[] {
  return everyAt(raw, 'home/rooms/*').flatMap(({ path: at, value }) => {
    const room = mapping(value);
    return PARTS.flatMap(({ key, side, whole }): Finding[] => {
      if (room[key] === undefined) return [];
      const path = [...at, key];
      if (room['elements'] !== undefined) {
        return [
          { path, expected: 'nothing beside `elements`, which list all of the room', key: true },
        ];
      }
      if (room[side] === whole) {
        return [
          {
            path,
            expected: `nothing beside "${side}: ${whole}", which holds for all of it`,
            key: true,
          },
        ];
      }
      const floor = readTolerantly(room['floor area'], 'm2');
      if (!(readTolerantly(room[key], 'm2') > floor)) return [];
      return [{ path, expected: `no more than the floor of the room (${floor} m2)` }];
    });
  });
}

const PARTS: readonly {
  readonly key: string;
  readonly side: string;
  readonly whole: string;
}[] = [
  { key: 'exposed floor', side: 'below', whole: 'outdoors' },
  { key: 'exposed ceiling', side: 'above', whole: 'roof' },
];
