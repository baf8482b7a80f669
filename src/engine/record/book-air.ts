import type { i32 } from '../../units/portable.ts';
import type { Model } from '../layout/model.ts';
import { DOOR, FRAME, ROOM } from '../layout/state-layout.ts';
import { CARRIED_TERMS } from '../ledger/ledger.ts';
import { BOOK } from '../ledger/ledger-accumulator.ts';

/**
 * Add what air carried over the step to the ledger, heat or water, against outdoors.
 *
 * @param mean      ROOM field of what is carried, mean over the step
 * @param supplied  ROOM field of the same in the air that fans supply
 * @param outdoor   the same outdoors
 * @param perKilogram  carried by a kilogram of dry air for one unit of it
 * @param first     place of the first of CARRIED_TERMS in a record
 * @param flows     BOOK records, this month's from record `row` on
 */
export function bookAir(
  { rooms, roomCount, dt, doors, frames, doorCount }: Model,
  mean: i32,
  supplied: i32,
  outdoor: number,
  perKilogram: number,
  first: i32,
  flows: Float64Array,
  row: i32,
): void {
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = (row + i) * BOOK_STRIDE + first;
    const carried = perKilogram * ((outdoor - rooms[r + mean]!) * dt);
    const supply = perKilogram * rooms[r + FAN]! * (rooms[r + supplied]! - outdoor);
    flows[k + LEAKAGE] = flows[k + LEAKAGE]! + rooms[r + LEAK_OUT]! * carried;
    flows[k + OPENINGS] = flows[k + OPENINGS]! + rooms[r + OPENING_OUT]! * carried;
    flows[k + EXTRACTS] = flows[k + EXTRACTS]! + rooms[r + EXTRACT]! * carried;
    flows[k + FLUES] = flows[k + FLUES]! + rooms[r + DRAUGHT]! * carried;
    flows[k + FANS] = flows[k + FANS]! + supply * dt;
  }
  for (let d = 0; d < doorCount; d++) {
    const a = frames[d * FRAME_STRIDE + A]!;
    const b = frames[d * FRAME_STRIDE + B]!;
    const forth = doors[d * DOOR_STRIDE + FORTH]! * (rooms[a * ROOM_STRIDE + mean]! - outdoor);
    const back = doors[d * DOOR_STRIDE + BACK]! * (rooms[b * ROOM_STRIDE + mean]! - outdoor);
    const passed = perKilogram * (forth - back) * dt;
    const ka = (row + a) * BOOK_STRIDE + first + DOORWAYS;
    const kb = (row + b) * BOOK_STRIDE + first + DOORWAYS;
    flows[ka] = flows[ka]! - passed;
    flows[kb] = flows[kb]! + passed;
  }
}

const { leakOut: LEAK_OUT, openingOut: OPENING_OUT, extract: EXTRACT, draught: DRAUGHT } = ROOM;
const { fan: FAN } = ROOM;
const { forth: FORTH, back: BACK } = DOOR;
const { a: A, b: B } = FRAME;

const term = (name: (typeof CARRIED_TERMS)[number]): number => CARRIED_TERMS.indexOf(name);
const LEAKAGE = term('leakage');
const OPENINGS = term('openings');
const EXTRACTS = term('extracts');
const FLUES = term('draught');
const FANS = term('fans');
const DOORWAYS = term('doorways');

const ROOM_STRIDE = ROOM.stride;
const DOOR_STRIDE = DOOR.stride;
const FRAME_STRIDE = FRAME.stride;
const BOOK_STRIDE = BOOK.stride;
