import { heatMissing, isHeld } from '../imposed/hold-rooms.ts';
import type { Model } from '../layout/model.ts';
import { IMPOSED, ROOM } from '../layout/state-layout.ts';
import { ENERGY_TERMS, WATER_TERMS } from '../ledger/ledger.ts';
import { BOOK } from '../ledger/ledger-accumulator.ts';
import type { TraceView } from './trace.ts';

/**
 * Add to the ledger and the trace what held rooms took in the step, and to the ledger what was given
 * besides.
 *
 * @param s      number of the step in the trace
 * @param flows  BOOK records, this month's from record `row` on
 */
export function bookImposed(
  m: Model,
  { room: { heldHeat, heldVapour } }: TraceView,
  s: number,
  flows: Float64Array,
  row: number,
): void {
  const { roomCount, dt } = m;
  const { records } = m.imposed;
  for (let i = 0; i < roomCount; i++) {
    const at = i * IMPOSED_STRIDE;
    const k = (row + i) * BOOK_STRIDE;
    const w = records[at + MEAN_W]!;
    const heat = isHeld(m, i) ? heatMissing(m, i) + m.rooms[i * ROOM_STRIDE + COOLING]! : 0;
    const vapour = Number.isNaN(w) ? 0 : vapourMissing(m, i);
    heldHeat[s * roomCount + i] = heat;
    heldVapour[s * roomCount + i] = vapour;
    flows[k + HELD_HEAT] = flows[k + HELD_HEAT]! + heat * dt;
    flows[k + HELD_VAPOUR] = flows[k + HELD_VAPOUR]! + vapour * dt;
    const extraHeat = records[at + HEAT]!;
    const extraVapour = records[at + VAPOUR]!;
    if (!Number.isNaN(extraHeat)) flows[k + EXTRA_HEAT] = flows[k + EXTRA_HEAT]! + extraHeat * dt;
    if (!Number.isNaN(extraVapour)) {
      flows[k + EXTRA_VAPOUR] = flows[k + EXTRA_VAPOUR]! + extraVapour * dt;
    }
  }
}

/** What the vapour balance of a held room's air lacks. [kg/s] */
function vapourMissing({ rooms, matrix, solution, elimination }: Model, i: number): number {
  const { diagonal, rowStart, rowPosition, rowColumn } = elimination;
  const r = i * ROOM_STRIDE;
  const own = diagonal[i]!;
  let missing = rooms[r + OWN_LOSS]! * solution[i]! - rooms[r + OWN_GAIN]!;
  for (let k = rowStart[i]!; k < rowStart[i + 1]!; k++) {
    const position = rowPosition[k]!;
    if (position !== own) missing += matrix[position]! * solution[rowColumn[k]!]!;
  }
  return missing;
}

const { meanHumidity: MEAN_W, heat: HEAT, vapour: VAPOUR } = IMPOSED;
const { cooling: COOLING, ownLoss: OWN_LOSS, ownGain: OWN_GAIN } = ROOM;

const HELD_HEAT = ENERGY_TERMS.indexOf('held');
const EXTRA_HEAT = ENERGY_TERMS.indexOf('extra');
const HELD_VAPOUR = ENERGY_TERMS.length + WATER_TERMS.indexOf('held');
const EXTRA_VAPOUR = ENERGY_TERMS.length + WATER_TERMS.indexOf('extra');

const IMPOSED_STRIDE = IMPOSED.stride;
const ROOM_STRIDE = ROOM.stride;
const BOOK_STRIDE = BOOK.stride;
