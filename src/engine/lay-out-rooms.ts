import type { Home } from '../home/home.ts';
import type { Chains } from './rc-chains.ts';
import { CHAIN, LINK, ROOM } from './state-layout.ts';

/**
 * ROOM records of a home: what stays the same through a run, with what elements, panes and emitters
 * add to their rooms.
 *
 * @param density  dry air in a cubic metre of room air [kg/m3]
 * @param airCp    of a kilogram of dry air with its vapour [J/(kg K)]
 * @param dt       control step [s]
 */
export function layOutRooms(
  home: Home,
  chains: Chains,
  density: number,
  airCp: number,
  dt: number,
): Float64Array {
  const rooms = airOfRooms(home, density, airCp, dt);
  addChains(rooms, chains);
  addPanes(rooms, home);
  addEmitters(rooms, home, chains);
  return rooms;
}

function airOfRooms(home: Home, density: number, airCp: number, dt: number): Float64Array {
  const rooms = new Float64Array(home.rooms.length * ROOM_STRIDE);
  home.rooms.forEach((room, i) => {
    const r = i * ROOM_STRIDE;
    rooms[r + ROOM.volume] = room.volume;
    rooms[r + ROOM.airMass] = density * room.volume;
    rooms[r + ROOM.massRate] = (density * room.volume) / dt;
    rooms[r + ROOM.airCapacity] = room.furnishingFactor * density * room.volume * airCp;
    rooms[r + ROOM.capacityRate] = rooms[r + ROOM.airCapacity]! / dt;
    rooms[r + ROOM.sunToAir] = room.sunToAir;
    rooms[r + ROOM.bufferCapacity] = room.buffer.capacity;
    rooms[r + ROOM.bufferRate] = room.buffer.capacity / dt;
    rooms[r + ROOM.bufferG] = room.buffer.capacity > 0 ? room.buffer.conductance : 0;
    rooms[r + ROOM.leakShare] = home.leakage.share[i]!;
  });
  return rooms;
}

function addChains(rooms: Float64Array, { count, chains, links }: Chains): void {
  for (let c = 0; c < count; c++) {
    const at = c * CHAIN_STRIDE;
    const r = links[c * LINK_STRIDE + LINK.room]! * ROOM_STRIDE;
    const far = links[c * LINK_STRIDE + LINK.farRoom]!;
    rooms[r + ROOM.chainG]! += chains[at + CHAIN.nearG]!;
    rooms[r + ROOM.surface]! += chains[at + CHAIN.area]!;
    if (chains[at + CHAIN.radiantShare]! > 0) rooms[r + ROOM.surfaced] = 1;
    if (far < 0) continue;
    rooms[far * ROOM_STRIDE + ROOM.chainG]! += chains[at + CHAIN.farG]!;
    rooms[far * ROOM_STRIDE + ROOM.surface]! += chains[at + CHAIN.area]!;
  }
}

function addPanes(rooms: Float64Array, { panes }: Home): void {
  for (const pane of panes) {
    rooms[pane.room * ROOM_STRIDE + ROOM.paneUA]! += pane.uValue * pane.area;
    rooms[pane.room * ROOM_STRIDE + ROOM.surface]! += pane.area;
  }
}

/** Radiant share of each room's emitters together, and what of a watt reaches the air at once. */
function addEmitters(rooms: Float64Array, home: Home, { count, chains, links }: Chains): void {
  const passedOn = new Float64Array(home.rooms.length);
  for (let c = 0; c < count; c++) {
    const at = c * CHAIN_STRIDE;
    passedOn[links[c * LINK_STRIDE + LINK.room]!]! +=
      chains[at + CHAIN.radiantShare]! * chains[at + CHAIN.nearToNear]!;
  }
  home.rooms.forEach((_, i) => {
    const r = i * ROOM_STRIDE;
    const mine = home.emitters.filter((e) => e.room === i);
    const rated = mine.reduce((sum, e) => sum + e.ratedPower, 0);
    const radiated = mine.reduce((sum, e) => sum + e.ratedPower * e.radiantShare, 0);
    // Where there is no surface to warm, radiant heat has only the air.
    const share = rated > 0 && rooms[r + ROOM.surfaced] === 1 ? radiated / rated : 0;
    rooms[r + ROOM.heated] = rated > 0 ? 1 : 0;
    rooms[r + ROOM.radiantShare] = share;
    rooms[r + ROOM.reach] = 1 - share + share * passedOn[i]!;
  });
}

const ROOM_STRIDE = ROOM.stride;
const CHAIN_STRIDE = CHAIN.stride;
const LINK_STRIDE = LINK.stride;
