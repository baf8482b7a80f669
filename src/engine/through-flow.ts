import type { Model } from './model.ts';
import { solveSparse } from './numerics/sparse.ts';
import { DOOR, FRAME, ROOM } from './state-layout.ts';

/**
 * Connected components of the rooms joined by doorways, open or shut: within such a part of the home
 * air can make up for unbalanced flows. Each is numbered by its first room.
 */
export function partsOfHome(
  rooms: number,
  doorways: readonly (readonly [number, number])[],
): Int32Array {
  const part = Int32Array.from({ length: rooms }, (_, i) => i);
  const rootOf = (i: number): number => {
    let root = i;
    while (part[root] !== root) root = part[root]!;
    return root;
  };
  for (const [a, b] of doorways) {
    const [x, y] = [rootOf(a), rootOf(b)];
    part[Math.max(x, y)] = Math.min(x, y);
  }
  return part.map((_, i) => rootOf(i));
}

/**
 * Balance unbalanced flows (extract fans, flues, supply, cross ventilation) by flows through leaks and
 * doorways, so that as much air enters each room as leaves it.
 *
 * For each connected part of the home, the net extract flow U combines with the natural leakage N in
 * quadrature: sqrt(N2 + U2) enters through leaks and the excess over U leaves through them (the other
 * way round for oversupply). Both are distributed to rooms like leakage itself. The imbalance left in
 * a room passes through its doorways, divided in proportion to their open area.
 *
 * Source: ASHRAE Standard 62.2 (2016) section 4, superposition of unbalanced flows (from memory).
 *
 * @param parts  see partsOfHome
 * @param open   share by which doorways stand open
 */
export function balanceFlows(m: Model, parts: Int32Array, open: Float64Array): void {
  leakToMakeUp(m, parts);
  const { rooms, roomCount, doors, frames, doorCount, matrix, rhs, solution } = m;
  const { diagonal } = m.elimination;
  for (let k = 0; k < matrix.length; k++) matrix[k] = 0;
  for (let d = 0; d < doorCount; d++) {
    const frame = d * FRAME_STRIDE;
    const g = passage(doors, d * DOOR_STRIDE, open[d]!);
    const aa = diagonal[frames[frame + A]!]!;
    const bb = diagonal[frames[frame + B]!]!;
    const ab = frames[frame + AB]!;
    const ba = frames[frame + BA]!;
    matrix[aa] = matrix[aa]! + g;
    matrix[bb] = matrix[bb]! + g;
    matrix[ab] = matrix[ab]! - g;
    matrix[ba] = matrix[ba]! - g;
  }
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const into = rooms[r + LEAK]! + rooms[r + OPENING]! + rooms[r + FAN]!;
    const leaves =
      rooms[r + LEAK_OUT]! + rooms[r + OPENING_OUT]! + rooms[r + EXTRACT]! + rooms[r + DRAUGHT]!;
    rhs[i] = parts[i] === i ? 0 : into - leaves;
  }
  holdFirstRooms(m, parts);
  solveSparse(m.elimination, matrix, rhs, solution);
  for (let d = 0; d < doorCount; d++) {
    const door = d * DOOR_STRIDE;
    const frame = d * FRAME_STRIDE;
    const g = passage(doors, door, open[d]!);
    const flow = g * (solution[frames[frame + A]!]! - solution[frames[frame + B]!]!);
    if (flow > 0) doors[door + FORTH] = doors[door + FORTH]! + flow;
    else doors[door + BACK] = doors[door + BACK]! - flow;
  }
}

/** Leaks in and out of each room with the fans running, which are alike without them. [kg/s] */
function leakToMakeUp({ rooms, roomCount }: Model, parts: Int32Array): void {
  for (let first = 0; first < roomCount; first++) {
    if (parts[first] !== first) continue;
    let natural = 0;
    let taken = 0;
    let share = 0;
    let members = 0;
    for (let i = first; i < roomCount; i++) {
      if (parts[i] !== first) continue;
      const r = i * ROOM_STRIDE;
      natural += rooms[r + LEAK]!;
      taken += rooms[r + OPENING_OUT]! + rooms[r + EXTRACT]! + rooms[r + DRAUGHT]!;
      taken -= rooms[r + OPENING]! + rooms[r + FAN]!;
      share += rooms[r + LEAK_SHARE]!;
      members++;
    }
    if (taken === 0) continue;
    const more = Math.sqrt(natural * natural + taken * taken);
    const into = taken > 0 ? more : more + taken;
    const out = taken > 0 ? more - taken : more;
    for (let i = first; i < roomCount; i++) {
      if (parts[i] !== first) continue;
      const r = i * ROOM_STRIDE;
      // A part with no leaks of its own still has to breathe: all its rooms alike.
      const part = share > 0 ? rooms[r + LEAK_SHARE]! / share : 1 / members;
      rooms[r + LEAK] = into * part;
      rooms[r + LEAK_OUT] = out * part;
    }
  }
}

/** Fix the potential of the first room of each part at 0, because only differences matter. */
function holdFirstRooms({ elimination, matrix, roomCount }: Model, parts: Int32Array): void {
  const { rowStart, rowPosition, diagonal } = elimination;
  for (let i = 0; i < roomCount; i++) {
    if (parts[i] !== i) continue;
    for (let k = rowStart[i]!; k < rowStart[i + 1]!; k++) matrix[rowPosition[k]!] = 0;
    matrix[diagonal[i]!] = 1;
  }
}

/** Flow area of a doorway: its open area and the gap that is left when shut. [m2] */
function passage(doors: Float64Array, door: number, part: number): number {
  return part * doors[door + WIDTH]! * doors[door + HEIGHT]! + GAP;
}

const { leak: LEAK, opening: OPENING, fan: FAN, leakShare: LEAK_SHARE } = ROOM;
const { leakOut: LEAK_OUT, openingOut: OPENING_OUT, extract: EXTRACT, draught: DRAUGHT } = ROOM;
const { width: WIDTH, height: HEIGHT, forth: FORTH, back: BACK } = DOOR;
const { a: A, b: B, ab: AB, ba: BA } = FRAME;
const ROOM_STRIDE = ROOM.stride;
const DOOR_STRIDE = DOOR.stride;
const FRAME_STRIDE = FRAME.stride;

/** Around a shut door: a centimetre under its leaf and less elsewhere; common practice. [m2] */
const GAP = 0.01;
