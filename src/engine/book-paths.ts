import type { AirNetwork } from './lay-out-air-network.ts';
import { DOOR, LINK, PATH, ROOM } from './state-layout.ts';

/**
 * Add the flows of a network to what goes in and out of rooms by leaks and windows, and to what passes
 * doorways either way.
 *
 * @param rooms  ROOM records
 * @param doors  DOOR records
 */
export function bookPaths(
  { pathCount, paths, links }: AirNetwork,
  rooms: Float64Array,
  doors: Float64Array,
): void {
  for (let p = 0; p < pathCount; p++) {
    const flow = paths[p * PATH_STRIDE + FLOW]!;
    const link = p * LINK_STRIDE;
    const inwards = Math.max(0, flow);
    const outwards = Math.max(0, -flow);
    if (links[link + KIND] === DOORWAY) {
      const door = links[link + DOOR_OF]! * DOOR_STRIDE;
      // Forth is from the doorway's first room to its second, as the path leads.
      doors[door + FORTH] = doors[door + FORTH]! + inwards;
      doors[door + BACK] = doors[door + BACK]! + outwards;
      continue;
    }
    const r = links[link + TO]! * ROOM_STRIDE;
    if (links[link + KIND] === WINDOW) {
      rooms[r + OPENING] = rooms[r + OPENING]! + inwards;
      rooms[r + OPENING_OUT] = rooms[r + OPENING_OUT]! + outwards;
    } else {
      rooms[r + LEAK] = rooms[r + LEAK]! + inwards;
      rooms[r + LEAK_OUT] = rooms[r + LEAK_OUT]! + outwards;
    }
  }
}

const { flow: FLOW, stride: PATH_STRIDE } = PATH;
const { to: TO, kind: KIND, door: DOOR_OF, stride: LINK_STRIDE } = LINK;
const { forth: FORTH, back: BACK, stride: DOOR_STRIDE } = DOOR;
const { leak: LEAK, leakOut: LEAK_OUT, opening: OPENING, openingOut: OPENING_OUT } = ROOM;
const ROOM_STRIDE = ROOM.stride;
const WINDOW = 1;
const DOORWAY = 2;
