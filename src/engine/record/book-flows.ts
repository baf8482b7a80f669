import type { i32 } from '../../units/portable.ts';
import type { Model } from '../layout/model.ts';
import { DOOR, ROOM } from '../layout/state-layout.ts';
import { AIR_TERMS } from '../ledger/ledger.ts';
import { AIR_BOOK, type LedgerAccumulator } from '../ledger/ledger-accumulator.ts';

/**
 * Add the air that the step moved between rooms and outdoors, and through doorways, to the ledger.
 *
 * @param row  first record of the month
 */
export function bookFlows(
  { rooms, roomCount, doors, doorCount, dt }: Model,
  { air, doorways }: LedgerAccumulator,
  row: i32,
): void {
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = (row + i) * AIR_BOOK_STRIDE;
    air[k + LEAKS_IN] = air[k + LEAKS_IN]! + rooms[r + LEAK]! * dt;
    air[k + WINDOWS_IN] = air[k + WINDOWS_IN]! + rooms[r + OPENING]! * dt;
    air[k + FANS_IN] = air[k + FANS_IN]! + rooms[r + FAN]! * dt;
    air[k + LEAKS_OUT] = air[k + LEAKS_OUT]! + rooms[r + LEAK_OUT]! * dt;
    air[k + WINDOWS_OUT] = air[k + WINDOWS_OUT]! + rooms[r + OPENING_OUT]! * dt;
    air[k + EXTRACTS] = air[k + EXTRACTS]! + rooms[r + EXTRACT]! * dt;
    air[k + FLUES] = air[k + FLUES]! + rooms[r + DRAUGHT]! * dt;
  }
  const month = Math.trunc(row / roomCount) as i32;
  for (let d = 0; d < doorCount; d++) {
    const k = 2 * (month * doorCount + d);
    doorways[k] = doorways[k]! + doors[d * DOOR_STRIDE + FORTH]! * dt;
    doorways[k + 1] = doorways[k + 1]! + doors[d * DOOR_STRIDE + BACK]! * dt;
  }
}

const { leak: LEAK, opening: OPENING, fan: FAN } = ROOM;
const { leakOut: LEAK_OUT, openingOut: OPENING_OUT, extract: EXTRACT, draught: DRAUGHT } = ROOM;
const { forth: FORTH, back: BACK } = DOOR;

const term = (name: (typeof AIR_TERMS)[number]): number => AIR_TERMS.indexOf(name);
const LEAKS_IN = term('leaksIn');
const WINDOWS_IN = term('windowsIn');
const FANS_IN = term('fansIn');
const LEAKS_OUT = term('leaksOut');
const WINDOWS_OUT = term('windowsOut');
const EXTRACTS = term('extracts');
const FLUES = term('draught');

const ROOM_STRIDE = ROOM.stride;
const DOOR_STRIDE = DOOR.stride;
const AIR_BOOK_STRIDE = AIR_BOOK.stride;
