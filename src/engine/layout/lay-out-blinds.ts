import type { Blind, Home, Pane } from '../../home/home.ts';
import { requireWithin } from '../../units/require-within.ts';
import { positionOf } from '../numerics/sparse.ts';
import type { HeatNetwork } from './heat-network.ts';
import { PANE_FILM, splitPaneFilm } from './pane-film.ts';
import { skyDrop } from './sky-drop.ts';
import { BLIND, ROOM, SHADED } from './state-layout.ts';

/** BLIND records of a home, the room and pane of each, and the rooms that have any. */
export interface Blinds {
  readonly count: number;
  readonly records: Float64Array;
  readonly room: Int32Array;
  readonly pane: Int32Array;
  /** Rooms with blinds, SHADED records of them, and which of them each blind is in. */
  readonly shaded: Int32Array;
  readonly open: Float64Array;
  readonly shadedOf: Int32Array;
  /** Positions in the matrix of heat, four a shaded room, in the order of the last fields of SHADED. */
  readonly places: Int32Array;
}

/**
 * @param rooms  ROOM records, with panes
 * @throws RangeError for a share outside 0 to 1, or two blinds over one pane
 */
export function layOutBlinds(home: Home, rooms: Float64Array, heat: HeatNetwork): Blinds {
  const { blinds = [], panes } = home;
  if (new Set(blinds.map(({ pane }) => pane)).size < blinds.length) {
    throw new RangeError('layOutBlinds: a pane has two blinds');
  }
  const room = Int32Array.from(blinds, ({ pane }) => panes[pane]!.room);
  const shaded = Int32Array.from(new Set(room));
  const places = Int32Array.from([...shaded].flatMap((i) => placesOf(heat, i)));
  return {
    count: blinds.length,
    records: recordsOf(home, blinds, rooms),
    room,
    pane: Int32Array.from(blinds, ({ pane }) => pane),
    shaded,
    open: openOf(shaded, rooms, heat.fixed, places),
    shadedOf: room.map((i) => shaded.indexOf(i)),
    places,
  };
}

function placesOf({ elimination }: HeatNetwork, i: number): number[] {
  const [radiant, air] = [2 * i, 2 * i + 1];
  return [
    positionOf(elimination, air, air),
    positionOf(elimination, radiant, radiant),
    positionOf(elimination, air, radiant),
    positionOf(elimination, radiant, air),
  ];
}

function recordsOf(home: Home, blinds: readonly Blind[], rooms: Float64Array): Float64Array {
  const records = new Float64Array(blinds.length * BLIND.stride);
  blinds.forEach((blind, b) => {
    const { gShare, uShare } = blind;
    requireWithin(gShare, [0, 1], 'layOutBlinds: share of the g-value', '-');
    requireWithin(uShare, [0, 1], 'layOutBlinds: share of the U-value', '-');
    const pane = home.panes[blind.pane]!;
    const surfaced = rooms[pane.room * ROOM.stride + ROOM.surfaced] === 1;
    const { convective, radiative } = splitPaneFilm(surfaced, home.longWave);
    const [toAir, toRadiant] = [convective * PANE_FILM, radiative * PANE_FILM];
    const less = pane.area * pane.uValue * (1 - uShare);
    const at = b * BLIND.stride;
    records[at + BLIND.sun] = 1 - gShare;
    records[at + BLIND.air] = less * toAir;
    records[at + BLIND.radiant] = less * toRadiant;
    records[at + BLIND.between] = less * toAir * toRadiant;
    records[at + BLIND.airSky] = less * toAir * skyDrop(pane.tilt);
    records[at + BLIND.radiantSky] = less * toRadiant * skyDrop(pane.tilt);
    records[at + BLIND.openDrop] = pane.uValue * PANE_FILM;
    records[at + BLIND.closedDrop] = closedDrop(blind, pane);
  });
  return records;
}

/**
 * How far the glass is from room to outdoors behind a closed blind [-]: outside, the resistance from
 * room to glass is what it was; inside, that from glass to outdoors is.
 */
function closedDrop({ inside, uShare }: Blind, { uValue }: Pane): number {
  return inside ? 1 - uShare * (1 - uValue * PANE_FILM) : uShare * uValue * PANE_FILM;
}

function openOf(
  shaded: Int32Array,
  rooms: Float64Array,
  fixed: Float64Array,
  places: Int32Array,
): Float64Array {
  const open = new Float64Array(shaded.length * SHADED.stride);
  shaded.forEach((i, q) => {
    const [r, at] = [i * ROOM.stride, q * SHADED.stride];
    open[at + SHADED.air] = rooms[r + ROOM.paneAir]!;
    open[at + SHADED.radiant] = rooms[r + ROOM.paneRadiant]!;
    open[at + SHADED.between] = rooms[r + ROOM.paneBetween]!;
    open[at + SHADED.airSky] = rooms[r + ROOM.paneAirSky]!;
    open[at + SHADED.radiantSky] = rooms[r + ROOM.paneRadiantSky]!;
    for (let k = 0; k < PLACES; k++) open[at + SHADED.ofAir + k] = fixed[places[PLACES * q + k]!]!;
  });
  return open;
}

/** Positions of a room: its two diagonals, and what joins air and radiant node both ways. */
const PLACES = 4;
