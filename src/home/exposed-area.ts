import type { Home } from './home.ts';

/** How much a square metre of each kind counts. [-] */
export type EnvelopeWeights = Readonly<Record<'wall' | 'roof' | 'floor', number>>;

/**
 * Envelope of each room, weighted: walls and panes to outdoors, roofs, and floors on the ground or over
 * open air. [m2]
 *
 * Walls to neighbours are taken to be tight. A home without any envelope (a test, a flat deep inside a
 * block) is shared by floor area instead.
 */
export function exposedAreas(
  home: Pick<Home, 'rooms' | 'elements' | 'panes'>,
  weights: EnvelopeWeights = LEAKAGE_WEIGHTS,
): number[] {
  const area = home.rooms.map(() => 0);
  for (const element of home.elements) {
    if (element.far.to !== 'outdoors' && element.far.to !== 'ground') continue;
    const kind = element.kind === 'partition' ? 'wall' : element.kind;
    area[element.room]! += weights[kind] * element.area;
  }
  for (const pane of home.panes) area[pane.room]! += weights.wall * pane.area;
  return area.some((a) => a > 0) ? area : home.rooms.map((room) => room.floorArea);
}

/**
 * By which leaks are shared among rooms.
 *
 * Most cracks are where walls meet floors, ceilings and windows, so that a square metre of wall or window
 * counts in full and one of roof or lowest floor by half. Common practice; handbook averages for houses
 * give walls, windows and doors about a half of all leaks and top ceilings a fifth (ASHRAE Fundamentals,
 * ch. 16, after Dickerhoff and Harrje and Born 1982, from memory), which for one storey makes it a third.
 */
const LEAKAGE_WEIGHTS: EnvelopeWeights = { wall: 1, roof: 0.5, floor: 0.5 };

/** By which background vents are: they sit in windows and walls. */
export const VENT_WEIGHTS: EnvelopeWeights = { wall: 1, roof: 0, floor: 0 };
