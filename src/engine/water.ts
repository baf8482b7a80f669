import type { DayInputs } from '../control/day-inputs.ts';
import { MOLAR_RATIO } from '../physics/moist-air/constants.ts';
import { ENERGY_TERMS, WATER_TERMS, type WaterTerm } from './ledger.ts';
import { BOOK } from './ledger-accumulator.ts';
import type { Model } from './model.ts';
import { eliminateStores, settleStores } from './moisture-stores.ts';
import { overImplicitWeight } from './numerics/implicit-weight.ts';
import { solveSparse } from './numerics/sparse.ts';
import { DOOR, FRAME, PANE, ROOM } from './state-layout.ts';

/**
 * Step the water of all rooms together (air, moisture buffers, films on panes) and add it to the ledger.
 *
 * Buffers drop out of the room's equation in closed form (see moisture-stores.ts). A pane exchanges with the air while it is wet or the air over
 * it is too moist; a film that would be used up within the step dries at the rate that just does so.
 *
 * @param outdoor          outdoor temperature [°C]
 * @param outdoorHumidity  outdoor humidity ratio [kg/kg]
 * @param saturation       saturation pressure by temperature, [°C] -> [Pa]
 * @param flows            BOOK records, this month's from record `row` on
 */
export function stepWater(
  m: Model,
  day: DayInputs,
  at: number,
  outdoor: number,
  outdoorHumidity: number,
  saturation: (temperature: number) => number,
  flows: Float64Array,
  row: number,
): void {
  const { rooms, roomCount, panes, paneCount, paneRoom, pressure } = m;
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    rooms[r + SATURATION] = saturation(rooms[r + MEAN_T]!);
    const guess = 2 * rooms[r + HUMIDITY]! - rooms[r + MEAN]!;
    rooms[r + PRESSURE] = pressure / (MOLAR_RATIO + Math.max(guess, 0));
    rooms[r + WET_G] = 0;
  }
  for (let p = 0; p < paneCount; p++) {
    const r = paneRoom[p]! * ROOM_STRIDE;
    const t = rooms[r + MEAN_T]!;
    const pane = p * PANE_STRIDE;
    if (panes[pane + WET] === 1) rooms[r + WET_G] = rooms[r + WET_G]! + panes[pane + VAPOUR_G]!;
    panes[pane + PANE_SATURATION] = saturation(t - panes[pane + DROP]! * (t - outdoor));
  }
  eliminateStores(m);
  assemble(m, day, at, outdoorHumidity);
  solveWithFilms(m);
  settle(m);
  settleStores(m);
  bookWater(m, day, at, outdoorHumidity, flows, row);
  settlePanes(m, flows, row);
}

function assemble(m: Model, day: DayInputs, at: number, outdoorHumidity: number): void {
  const { rooms, roomCount, matrix, flow, rhs } = m;
  const { diagonal } = m.elimination;
  const { peopleVapour, applianceVapour, drying } = day;
  for (let k = 0; k < matrix.length; k++) matrix[k] = flow[k]!;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = diagonal[i]!;
    const perHumidity = rooms[r + PRESSURE]!;
    const perStep = rooms[r + MASS_RATE]!;
    const dried = flow[k]! + rooms[r + COIL_AIR]!;
    const rate = dried + (rooms[r + BUFFER_G]! + rooms[r + WET_G]!) * perHumidity;
    const overWeight = overImplicitWeight(rate / perStep);
    const store = perStep * overWeight;
    rooms[r + OVER_WEIGHT] = overWeight;
    matrix[k] = dried + store + rooms[r + UPTAKE]! * perHumidity;
    rhs[i] =
      store * rooms[r + HUMIDITY]! +
      rooms[r + EXCHANGE]! * outdoorHumidity +
      rooms[r + FAN]! * rooms[r + FAN_W]! +
      rooms[r + RELEASE]! +
      rooms[r + COIL_WATER]! +
      peopleVapour[at + i]! +
      applianceVapour[at + i]! +
      drying[at + i]! +
      rooms[r + DEVICE_WATER]!;
  }
}

/** Active-set solution of which panes are wet: solve, check every pane, and solve again until all agree. */
function solveWithFilms(m: Model): void {
  const { paneCount } = m;
  for (let round = 0; ; round++) {
    solveOnce(m);
    const moved = checkPanes(m, round > MANY);
    if (!moved || round > MANY + 4 * paneCount) return;
  }
}

function solveOnce(m: Model): void {
  const { rooms, roomCount, dt, panes, paneCount, paneRoom, elimination } = m;
  const { matrix, matrixWork, rhs, rhsWork, solution } = m;
  for (let k = 0; k < matrix.length; k++) matrixWork[k] = matrix[k]!;
  for (let i = 0; i < roomCount; i++) rhsWork[i] = rhs[i]!;
  for (let p = 0; p < paneCount; p++) {
    const pane = p * PANE_STRIDE;
    const i = paneRoom[p]!;
    if (panes[pane + WET] === 1) {
      const g = panes[pane + VAPOUR_G]!;
      const k = elimination.diagonal[i]!;
      matrixWork[k] = matrixWork[k]! + g * rooms[i * ROOM_STRIDE + PRESSURE]!;
      rhsWork[i] = rhsWork[i]! + g * panes[pane + PANE_SATURATION]!;
    } else if (panes[pane + FILM]! > 0) {
      rhsWork[i] = rhsWork[i]! + panes[pane + FILM]! / dt;
    }
  }
  solveSparse(elimination, matrixWork, rhsWork, solution);
}

/** Whether some pane violates its assumed wet or dry state; at most one is changed if `single`. */
function checkPanes(
  { rooms, dt, panes, paneCount, paneRoom, solution }: Model,
  single: boolean,
): boolean {
  let moved = false;
  for (let p = 0; p < paneCount; p++) {
    const pane = p * PANE_STRIDE;
    const i = paneRoom[p]!;
    const film = panes[pane + FILM]!;
    const over = rooms[i * ROOM_STRIDE + PRESSURE]! * solution[i]! - panes[pane + PANE_SATURATION]!;
    const free = panes[pane + VAPOUR_G]! * over;
    const wet = film + free * dt > 0 ? 1 : 0;
    panes[pane + CONDENSING] = wet === 1 ? free : -film / dt;
    if (wet === panes[pane + WET] || (single && moved)) continue;
    panes[pane + WET] = wet;
    moved = true;
  }
  return moved;
}

function settle(m: Model): void {
  const { rooms, roomCount, solution } = m;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const now = rooms[r + HUMIDITY]!;
    const mean = solution[i]!;
    rooms[r + MEAN] = mean;
    rooms[r + HUMIDITY] = now + (mean - now) * rooms[r + OVER_WEIGHT]!;
    rooms[r + CONDENSING_ALL] = 0;
  }
}

function settlePanes(m: Model, flows: Float64Array, row: number): void {
  const { rooms, dt, panes, paneCount, paneRoom, evaporation } = m;
  for (let p = 0; p < paneCount; p++) {
    const pane = p * PANE_STRIDE;
    const freed = panes[pane + CONDENSING]!;
    if (freed === 0) continue;
    const i = paneRoom[p]!;
    const r = i * ROOM_STRIDE;
    rooms[r + CONDENSING_ALL] = rooms[r + CONDENSING_ALL]! + freed;
    // The part of the heat that the glass passes outdoors is lost to the room.
    rooms[r + PHASE] = rooms[r + PHASE]! + evaporation * freed * (1 - panes[pane + DROP]!);
    const film = panes[pane + WET] === 1 ? panes[pane + FILM]! + freed * dt : 0;
    const most = FILM_HOLDS * panes[pane + AREA]!;
    panes[pane + FILM] = Math.min(film, most);
    if (film > most) {
      const k = (row + i) * BOOK_STRIDE + RUNOFF;
      flows[k] = flows[k]! - (film - most);
    }
  }
}

function bookWater(
  m: Model,
  day: DayInputs,
  at: number,
  outdoorHumidity: number,
  flows: Float64Array,
  row: number,
): void {
  const { rooms, roomCount, dt, doors, frames, doorCount } = m;
  const { peopleVapour, applianceVapour, drying } = day;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = (row + i) * BOOK_STRIDE;
    const fall = (outdoorHumidity - rooms[r + MEAN]!) * dt;
    flows[k + PEOPLE] = flows[k + PEOPLE]! + peopleVapour[at + i]! * dt;
    flows[k + APPLIANCES] = flows[k + APPLIANCES]! + applianceVapour[at + i]! * dt;
    flows[k + DRYING] = flows[k + DRYING]! + drying[at + i]! * dt;
    flows[k + LEAKAGE] = flows[k + LEAKAGE]! + rooms[r + LEAK_OUT]! * fall;
    flows[k + OPENINGS] = flows[k + OPENINGS]! + rooms[r + OPENING_OUT]! * fall;
    flows[k + EXTRACTS] = flows[k + EXTRACTS]! + rooms[r + EXTRACT]! * fall;
    flows[k + FLUES] = flows[k + FLUES]! + rooms[r + DRAUGHT]! * fall;
    const supplied = rooms[r + FAN]! * (rooms[r + FAN_W]! - outdoorHumidity);
    flows[k + FANS] = flows[k + FANS]! + supplied * dt;
    flows[k + DEVICES] = flows[k + DEVICES]! + rooms[r + DEVICE_WATER]! * dt;
    const drained = rooms[r + COIL_AIR]! * rooms[r + MEAN]! - rooms[r + COIL_WATER]!;
    flows[k + COOLING] = flows[k + COOLING]! - drained * dt;
  }
  for (let d = 0; d < doorCount; d++) {
    const a = frames[d * FRAME_STRIDE + A]!;
    const b = frames[d * FRAME_STRIDE + B]!;
    const moister = rooms[a * ROOM_STRIDE + MEAN]! - outdoorHumidity;
    const other = rooms[b * ROOM_STRIDE + MEAN]! - outdoorHumidity;
    const back = doors[d * DOOR_STRIDE + BACK]! * other;
    const passed = (doors[d * DOOR_STRIDE + FORTH]! * moister - back) * dt;
    const ka = (row + a) * BOOK_STRIDE + DOORWAYS;
    const kb = (row + b) * BOOK_STRIDE + DOORWAYS;
    flows[ka] = flows[ka]! - passed;
    flows[kb] = flows[kb]! + passed;
  }
}

const { meanTemperature: MEAN_T, humidity: HUMIDITY } = ROOM;
const { meanHumidity: MEAN, pressure: PRESSURE, saturation: SATURATION } = ROOM;
const {
  uptake: UPTAKE,
  release: RELEASE,
  waterOverWeight: OVER_WEIGHT,
  condensing: CONDENSING_ALL,
} = ROOM;
const { deviceWater: DEVICE_WATER, bufferG: BUFFER_G } = ROOM;
const { coilAir: COIL_AIR, coilWater: COIL_WATER } = ROOM;
const { leakOut: LEAK_OUT, openingOut: OPENING_OUT, extract: EXTRACT, draught: DRAUGHT } = ROOM;
const { massRate: MASS_RATE, fan: FAN, exchange: EXCHANGE } = ROOM;
const { phase: PHASE, wetG: WET_G, fanHumidity: FAN_W } = ROOM;
const { area: AREA, drop: DROP, vapourG: VAPOUR_G, film: FILM, wet: WET } = PANE;
const { saturation: PANE_SATURATION, condensing: CONDENSING } = PANE;
const { forth: FORTH, back: BACK } = DOOR;
const { a: A, b: B } = FRAME;

const term = (name: WaterTerm): number => ENERGY_TERMS.length + WATER_TERMS.indexOf(name);
const PEOPLE = term('people');
const APPLIANCES = term('appliances');
const DRYING = term('drying');
const LEAKAGE = term('leakage');
const OPENINGS = term('openings');
const EXTRACTS = term('extracts');
const FLUES = term('draught');
const FANS = term('fans');
const DOORWAYS = term('doorways');
const DEVICES = term('devices');
const COOLING = term('cooling');
const RUNOFF = term('runoff');

/** Greatest film of water on glass; what exceeds it runs off and leaves the balance. [kg/m2] */
const FILM_HOLDS = 0.2;
/** Rounds of checking panes before they are moved one at a time. */
const MANY = 20;

const ROOM_STRIDE = ROOM.stride;
const PANE_STRIDE = PANE.stride;
const DOOR_STRIDE = DOOR.stride;
const FRAME_STRIDE = FRAME.stride;
const BOOK_STRIDE = BOOK.stride;
