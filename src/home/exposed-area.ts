import type { Home } from './home.ts';

/**
 * Envelope area of each room: its elements and panes to outdoors. [m2]
 *
 * Leakage enters rooms in these proportions. Floors on the ground and walls to neighbours are taken
 * to be tight. A home without any envelope (a test, a flat deep inside a block) is shared by floor
 * area instead.
 */
export function exposedAreas(home: Pick<Home, 'rooms' | 'elements' | 'panes'>): number[] {
  const area = home.rooms.map(() => 0);
  for (const element of home.elements) {
    if (element.far.to === 'outdoors') area[element.room]! += element.area;
  }
  for (const pane of home.panes) area[pane.room]! += pane.area;
  return area.some((a) => a > 0) ? area : home.rooms.map((room) => room.floorArea);
}

/** Share of the home's leakage that enters each room; they add to 1. */
export function leakageShares(home: Pick<Home, 'rooms' | 'elements' | 'panes'>): number[] {
  const areas = exposedAreas(home);
  const sum = areas.reduce((total, area) => total + area, 0);
  return areas.map((area) => area / sum);
}
