import type { Home } from '../../src/home/home.ts';
import { randomHome } from '../engine/random-home.ts';

/**
 * A home as people build them, of any number of rooms: storeys of six, five rooms about a hall,
 * halls joined by stairs. Walls of three nodes, floors and roofs of two or three, a partition to the
 * hall of two, furniture of one; a window, a radiator, a door and a share of the leaks per room.
 */
export function typicalHome(rooms: number): Home {
  const drawn = randomHome(rooms, 5, false);
  const hallOf = (i: number): number => i - (i % STOREY);
  const storeys = Math.ceil(rooms / STOREY);
  const outdoors = (azimuth: number, tilt: number) =>
    ({ to: 'outdoors', azimuth, tilt, absorptance: 0.6 }) as const;
  return {
    ...drawn,
    species: drawn.species.slice(0, 1),
    panes: drawn.panes.map((p, i) => ({ ...p, azimuth: 90 * (i % 4) })),
    elements: drawn.rooms.flatMap((_, i) => {
      const storey = Math.floor(i / STOREY);
      const list: Home['elements'][number][] = [
        {
          name: 'outer wall',
          room: i,
          kind: 'wall',
          area: 12,
          chain: { resistance: [0.13, 0.15, 0.15, 0.04], capacity: [9e4, 1.8e5, 9e4] },
          far: outdoors(90 * (i % 4), 90),
        },
      ];
      if (storey === 0) {
        list.push({
          name: 'floor',
          room: i,
          kind: 'floor',
          area: 12,
          chain: { resistance: [0.17, 0.3, 0.6, 0.5], capacity: [8e4, 5e5, 5e5] },
          far: { to: 'ground', damping: 0.5 },
        });
      }
      if (storey === storeys - 1) {
        list.push({
          name: 'roof',
          room: i,
          kind: 'roof',
          area: 12,
          chain: { resistance: [0.1, 2.5, 0.04], capacity: [9e3, 9e3] },
          far: outdoors(0, 0),
        });
      }
      if (i !== hallOf(i)) {
        list.push({
          name: 'partition',
          room: i,
          kind: 'partition',
          area: 10,
          chain: { resistance: [0.13, 0.2, 0.13], capacity: [2e4, 2e4] },
          far: { to: 'room', room: hallOf(i) },
        });
      }
      return list;
    }),
    doorways: drawn.rooms.flatMap((_, i) => {
      const to = i === hallOf(i) ? i - STOREY : hallOf(i);
      return to < 0
        ? []
        : [
            {
              name: `door ${i}`,
              rooms: [i, to] as const,
              width: 0.8,
              height: 2,
              mixing: 0.01,
              shut: 0.002,
            },
          ];
    }),
  };
}

const STOREY = 6;
