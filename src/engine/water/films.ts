import { MOLAR_RATIO } from '../../physics/moist-air/constants.ts';
import { saturationAt } from '../../physics/moist-air/saturation-table.ts';
import type { f64, i32 } from '../../units/portable.ts';
import { holdHumidities } from '../imposed/hold-rooms.ts';
import { HUMIDITY as HELD } from '../layout/lay-out-imposed.ts';
import type { Model } from '../layout/model.ts';
import { FILM, ROOM } from '../layout/state-layout.ts';
import { ENERGY_TERMS, WATER_TERMS } from '../ledger/ledger.ts';
import { BOOK } from '../ledger/ledger-accumulator.ts';
import { solveSparse } from '../numerics/sparse.ts';

/** Set the saturation pressure over every film, and note what those that are wet let through. */
export function setFilms(
  { rooms, films, dt, cubics, heat: { solution } }: Model,
  outdoor: number,
): void {
  const { count, panes, tiles, records, room, slowOutdoor } = films;
  const before = slowOutdoor[0]!;
  const slow = Number.isNaN(before)
    ? outdoor
    : before + ((outdoor - before) * dt) / (dt + CORNER_LAG);
  slowOutdoor[0] = slow;
  for (let f = 0; f < count; f++) {
    const i = room[f]!;
    const r = i * ROOM_STRIDE;
    const at = f * FILM_STRIDE;
    if (records[at + WET] === 1) rooms[r + WET_G] = rooms[r + WET_G]! + records[at + VAPOUR_G]!;
    const air = rooms[r + MEAN_T]!;
    const seen = air + records[at + PANE_RADIANT]! * (solution[2 * i]! - air);
    const t = f < tiles ? seen : rooms[r + RADIANT_MEAN]!;
    const cold = f < panes ? outdoor - records[at + SKY_DROP]! : slow;
    records[at + OVER_FILM] = saturationAt(cubics, t - records[at + DROP]! * (t - cold));
  }
}

/**
 * Solve for the humidity of all rooms with an active set of what is wet and which air is saturated.
 *
 * A film exchanges freely while it lasts; one that would be used up within the step dries at the rate
 * that just does so, and a dry one takes water where the air over it is too moist. Where all that
 * leaves the air of a room above saturation, its humidity is that of saturated air and the rest falls
 * out. Each is the larger of two expressions that are linear in the humidities, in an M-matrix, so
 * that choosing the larger one again after every solution comes to an end.
 */
export function solveWithFilms(m: Model): void {
  const most = MANY + 4 * (m.films.count + m.roomCount);
  for (let round = 0; ; round++) {
    solveOnce(m);
    const single = round > MANY;
    const films = checkFilms(m, single);
    const moved = (films && single) || checkRooms(m, single) || films;
    if (!moved || round > most) return;
  }
}

function solveOnce(m: Model): void {
  const { rooms, roomCount, dt, films, elimination } = m;
  const { matrix, matrixWork, rhs, rhsWork, solution } = m;
  const { count, records, room } = films;
  const { diagonal, rowStart, rowPosition, size } = elimination;
  for (let k = 0; k < size; k++) matrixWork[k] = matrix[k]!;
  for (let i = 0; i < roomCount; i++) rhsWork[i] = rhs[i]!;
  for (let f = 0; f < count; f++) {
    const at = f * FILM_STRIDE;
    const i = room[f]!;
    if (records[at + WET] === 1) {
      const g = records[at + VAPOUR_G]!;
      const k = diagonal[i]!;
      matrixWork[k] = matrixWork[k]! + g * rooms[i * ROOM_STRIDE + PRESSURE]!;
      rhsWork[i] = rhsWork[i]! + g * records[at + OVER_FILM]!;
    } else if (records[at + WATER]! > 0) {
      rhsWork[i] = rhsWork[i]! + records[at + WATER]! / dt;
    }
  }
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    if (rooms[r + SATURATED] !== 1) continue;
    rooms[r + OWN_LOSS] = matrixWork[diagonal[i]!]!;
    rooms[r + OWN_GAIN] = rhsWork[i]!;
    for (let k = rowStart[i]!; k < rowStart[i + 1]!; k++) matrixWork[rowPosition[k]!] = 0;
    matrixWork[diagonal[i]!] = 1;
    rhsWork[i] = rooms[r + MOST_W]!;
  }
  if (m.imposed.flags[HELD] === 1) holdHumidities(m);
  solveSparse(elimination, matrixWork, rhsWork, solution);
}

/** Whether some film violates its assumed wet or dry state; at most one is changed if `single`. */
function checkFilms({ rooms, dt, films, solution }: Model, single: boolean): boolean {
  const { count, records, room } = films;
  let moved = false;
  for (let f = 0; f < count; f++) {
    const at = f * FILM_STRIDE;
    const i = room[f]!;
    const water = records[at + WATER]!;
    const over = rooms[i * ROOM_STRIDE + PRESSURE]! * solution[i]! - records[at + OVER_FILM]!;
    const free = records[at + VAPOUR_G]! * over;
    const wet = water + free * dt > 0 ? 1 : 0;
    records[at + CONDENSING] = wet === 1 ? free : -water / dt;
    if (wet === records[at + WET] || (single && moved)) continue;
    records[at + WET] = wet;
    moved = true;
  }
  return moved;
}

/** Whether some room's air is above saturation, or said to be saturated though nothing falls out of it. */
function checkRooms(m: Model, single: boolean): boolean {
  const { rooms, roomCount, matrix, solution } = m;
  const { diagonal, rowStart, rowPosition, rowColumn } = m.elimination;
  let moved = false;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    let falling: f64 = 0;
    if (rooms[r + SATURATED] === 1) {
      falling = rooms[r + OWN_GAIN]! - rooms[r + OWN_LOSS]! * solution[i]!;
      const own = diagonal[i]!;
      for (let k = rowStart[i]!; k < rowStart[i + 1]!; k++) {
        const position = rowPosition[k]!;
        if (position !== own) falling -= matrix[position]! * solution[rowColumn[k]!]!;
      }
    }
    rooms[r + FALLING] = falling;
    const over = solution[i]! > rooms[r + MOST_W]! * (1 + ROUNDING);
    const saturated = rooms[r + SATURATED] === 1 ? falling >= 0 : over;
    if (saturated === (rooms[r + SATURATED] === 1) || (single && moved)) continue;
    rooms[r + SATURATED] = saturated ? 1 : 0;
    moved = true;
  }
  return moved;
}

/** Advance every film to the end of the step; what falls out of the air lands on one, or runs off. */
export function settleFilms(m: Model, flows: Float64Array, row: i32): void {
  const { rooms, roomCount, dt, films, evaporation } = m;
  const { count, panes, records, room, below } = films;
  for (let f = 0; f < count; f++) {
    const at = f * FILM_STRIDE;
    const freed = records[at + CONDENSING]!;
    if (freed === 0) continue;
    const r = room[f]! * ROOM_STRIDE;
    const sum = f < panes ? r + ON_PANES : r + ON_WALLS;
    rooms[sum] = rooms[sum]! + freed;
    // The part of the heat that glass or wall passes outdoors is lost to the room.
    rooms[r + FREED] = rooms[r + FREED]! + evaporation * freed * (1 - records[at + DROP]!);
    const water = records[at + WET] === 1 ? records[at + WATER]! + freed * dt : 0;
    records[at + WATER] = water;
    if (water > records[at + MOST]!) runOff(m, f, flows, row);
  }
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const falling = rooms[r + FALLING]!;
    if (falling === 0) continue;
    rooms[r + ON_WALLS] = rooms[r + ON_WALLS]! + falling;
    rooms[r + FREED] = rooms[r + FREED]! + evaporation * falling;
    const f = below[i]!;
    if (f < 0) {
      const k = (row + i) * BOOK_STRIDE + RUNOFF;
      flows[k] = flows[k]! - falling * dt;
      continue;
    }
    const at = f * FILM_STRIDE + WATER;
    records[at] = records[at]! + falling * dt;
    if (records[at]! > records[f * FILM_STRIDE + MOST]!) runOff(m, f, flows, row);
  }
}

/**
 * Give the room the latent heat of the step, in the next one.
 *
 * The warmer saturated air gets, the less water falls out of it: k times the heat given, per step.
 * Where k is large, giving all of it a step late would swing ever wider; 1/(1 + k) of what is owed
 * settles at once. What is left is owed on.
 *
 * Source: fixed-point iteration relaxed to the secant of its feedback; done here.
 */
export function giveLatentHeat({
  rooms,
  roomCount,
  airCp,
  evaporation,
  matrix,
  flow,
  elimination,
}: Model): void {
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    let share: f64 = 1;
    if (rooms[r + FALLING] !== 0 || rooms[r + OWED] !== 0) {
      const own = elimination.diagonal[i]!;
      const most = rooms[r + MOST_W]!;
      const kelvin = rooms[r + MEAN_T]! + 273.15;
      const slope = (SLOPE * most * (1 + most / MOLAR_RATIO)) / (kelvin * kelvin);
      const heat = rooms[r + CAPACITY_RATE]! + airCp * flow[own]!;
      share = 1 / (1 + (evaporation * matrix[own]! * slope) / heat);
    }
    const freed = rooms[r + FREED]! + rooms[r + OWED]!;
    rooms[r + PHASE] = share * freed;
    rooms[r + OWED] = share < 1 ? freed - share * freed : 0;
  }
}

/** Let go of what a film cannot hold; it leaves the balance. */
function runOff({ films }: Model, f: i32, flows: Float64Array, row: i32): void {
  const { records, room } = films;
  const at = f * FILM_STRIDE;
  const k = (row + room[f]!) * BOOK_STRIDE + RUNOFF;
  flows[k] = flows[k]! - (records[at + WATER]! - records[at + MOST]!);
  records[at + WATER] = records[at + MOST]!;
}

const { meanTemperature: MEAN_T, radiantMean: RADIANT_MEAN, pressure: PRESSURE } = ROOM;
const { capacityRate: CAPACITY_RATE, freed: FREED, owed: OWED, phase: PHASE } = ROOM;
const { wetG: WET_G, condensing: ON_PANES, wallCondensing: ON_WALLS } = ROOM;
const { saturated: SATURATED, mostHumidity: MOST_W, falling: FALLING } = ROOM;
const { ownLoss: OWN_LOSS, ownGain: OWN_GAIN } = ROOM;
const { radiantShare: PANE_RADIANT, skyDrop: SKY_DROP } = FILM;
const { drop: DROP, vapourG: VAPOUR_G, most: MOST, water: WATER, wet: WET } = FILM;
const { saturation: OVER_FILM, condensing: CONDENSING } = FILM;
const RUNOFF = ENERGY_TERMS.length + WATER_TERMS.indexOf('runoff');

/** A corner answers outdoors as late as a mean of the last 24 hours does. [s] */
const CORNER_LAG = 43_200;
/** Latent heat over the gas constant of vapour, near 20 °C: slope of the logarithm of saturation. [K] */
const SLOPE = 5315;
/** Rounds of checking before films and rooms are moved one at a time. */
const MANY = 20;
/** Of a solution; air so little above saturation is saturated. [-] */
const ROUNDING = 1e-12;

const ROOM_STRIDE = ROOM.stride;
const FILM_STRIDE = FILM.stride;
const BOOK_STRIDE = BOOK.stride;
