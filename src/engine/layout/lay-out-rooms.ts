import type { Home } from '../../home/home.ts';
import { PANE_FILM, splitPaneFilm } from './pane-film.ts';
import { skyDrop } from './sky-drop.ts';
import { ROOM } from './state-layout.ts';
import type { Walls } from './walls.ts';

/**
 * ROOM records of a home: what stays the same through a run, with what walls, panes and emitters add
 * to their rooms.
 *
 * @param density  dry air in a cubic metre of room air [kg/m3]
 * @param airCp    of a kilogram of dry air with its vapour [J/(kg K)]
 * @param dt       control step [s]
 */
export function layOutRooms(
  home: Home,
  walls: Walls,
  density: number,
  airCp: number,
  dt: number,
): Float64Array {
  const rooms = airOfRooms(home, density, airCp, dt);
  addWalls(rooms, walls);
  addPanes(rooms, home);
  addEmitters(rooms, home);
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
    const { deep } = room.buffer;
    rooms[r + ROOM.deepCapacity] = deep.capacity;
    rooms[r + ROOM.deepRate] = deep.capacity / dt;
    rooms[r + ROOM.deepG] = deep.capacity > 0 ? deep.conductance : 0;
  });
  return rooms;
}

function addWalls(rooms: Float64Array, walls: Walls): void {
  const add = (room: number, radiant: number): void => {
    const r = room * ROOM_STRIDE;
    rooms[r + ROOM.radiantG]! += radiant;
    rooms[r + ROOM.surfaced] = 1;
  };
  for (let c = 0; c < walls.count; c++) {
    add(walls.near[c]!, walls.nearRadiant[c]!);
    if (walls.far[c]! >= 0) add(walls.far[c]!, walls.farRadiant[c]!);
  }
}

/** Panes: surfaces without capacity, whose temperature lies between what they see indoors and outdoors. */
function addPanes(rooms: Float64Array, { panes, longWave }: Home): void {
  for (const { room, uValue, area, tilt } of panes) {
    const r = room * ROOM_STRIDE;
    const surfaced = rooms[r + ROOM.surfaced] === 1;
    const { convective, radiative } = splitPaneFilm(surfaced, longWave);
    const toAir = convective * PANE_FILM;
    const toRadiant = radiative * PANE_FILM;
    const between = (toAir * toRadiant * area * (1 - uValue * PANE_FILM)) / PANE_FILM;
    rooms[r + ROOM.paneAir]! += uValue * area * toAir;
    rooms[r + ROOM.paneRadiant]! += uValue * area * toRadiant;
    rooms[r + ROOM.paneBetween]! += between;
    rooms[r + ROOM.paneAirSky]! += uValue * area * toAir * skyDrop(tilt);
    rooms[r + ROOM.paneRadiantSky]! += uValue * area * toRadiant * skyDrop(tilt);
    rooms[r + ROOM.radiantG]! += radiative * area;
  }
}

/** Radiant share of each room's emitters together. */
function addEmitters(rooms: Float64Array, home: Home): void {
  home.rooms.forEach((_, i) => {
    const r = i * ROOM_STRIDE;
    const mine = home.emitters.filter((e) => e.room === i);
    const rated = mine.reduce((sum, e) => sum + e.ratedPower, 0);
    const radiated = mine.reduce((sum, e) => sum + e.ratedPower * e.radiantShare, 0);
    // Where there is no surface to warm, radiant heat has only the air.
    const share = rated > 0 && rooms[r + ROOM.radiantG]! > 0 ? radiated / rated : 0;
    rooms[r + ROOM.heated] = rated > 0 ? 1 : 0;
    rooms[r + ROOM.radiantShare] = share;
  });
}

const ROOM_STRIDE = ROOM.stride;
