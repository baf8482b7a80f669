import { chainFromUValue } from '../../src/home/chain.ts';
import type { Element, Home, Pane } from '../../src/home/home.ts';
import { innerSurfaceResistance } from '../../src/physics/heat/surface-resistance.ts';
import { bareHome, bareRoom, ideallyHeated } from './homes.ts';

/** The semi-detached house of MacKay, Sustainable Energy, ch. E, before any upgrade. */
export function workedHouse(u: { roof?: number; mainWalls?: number } = {}): Home {
  const rooms = VENTILATION.map(({ name, volume }) => bareRoom(name, volume));
  const flow = VENTILATION.map(({ volume, ach }) => (volume * ach) / 3600);
  const whole = flow.reduce((sum, q) => sum + q, 0);
  return ideallyHeated(
    bareHome(rooms, {
      longWave: 0, // the book knows one temperature of a room
      elements: [
        element('pitched roof', 0, 'roof', 48, u.roof ?? 0.6),
        element('flat roof', 1, 'roof', 1.6, 3),
        element('floor', 3, 'floor', 50, 0.8),
        element('extension walls', 1, 'wall', 24.1, 0.6),
        element('main walls', 3, 'wall', 50, u.mainWalls ?? 1),
        element('thin wall', 2, 'wall', 2, 3),
      ],
      panes: [pane('single glazing', 2, 7.35, 5), pane('double glazing', 3, 17.8, 2.9)],
      leakage: {
        how: { by: 'rate', flow: whole },
        share: flow.map((q) => q / whole),
        ach50: null,
      },
    }),
  );
}

/**
 * An element as such sums treat it: no heat capacity to speak of, outdoor air on the far side, no
 * sun and no sky (every face looks down).
 */
export function element(
  name: string,
  room: number,
  kind: Element['kind'],
  area: number,
  uValue: number,
): Element {
  const inner = innerSurfaceResistance('horizontal');
  return {
    name,
    room,
    kind,
    area,
    chain: chainFromUValue(uValue, 0, { inner, outer: 0.04 }, 'even'),
    far: { to: 'outdoors', azimuth: 0, tilt: 180, absorptance: 0 },
  };
}

export function pane(name: string, room: number, area: number, uValue: number): Pane {
  return {
    ...{ name, room, area, uValue },
    ...{ gValue: 0, frameShare: 0, unshaded: 0, azimuth: 180, tilt: 180 },
  };
}

const VENTILATION = [
  { name: 'bedrooms', volume: 80, ach: 0.5 },
  { name: 'kitchen', volume: 36, ach: 2 },
  { name: 'hall', volume: 27, ach: 3 },
  { name: 'other', volume: 77, ach: 1 },
];
