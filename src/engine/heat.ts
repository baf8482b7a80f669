import type { Day } from '../control/day.ts';
import { DOOR, FRAME, ROOM } from './arena.ts';
import { BOOK } from './books.ts';
import { settleChains, sweepChains } from './chains.ts';
import { emitterLimits, exceedSources, settleEmitters } from './emitters.ts';
import { ENERGY_TERMS, type EnergyTerm } from './ledger.ts';
import type { Model } from './model.ts';
import { implicitWeight } from './numerics/implicit-weight.ts';
import { solveSparse } from './numerics/sparse.ts';

/**
 * Find the mean temperatures of all rooms over the step, and the heat of their emitters, at once.
 *
 * @param day      what people set and do; this step's values begin at `at` (step times rooms)
 * @param outdoor  outdoor temperature [°C]
 */
export function solveHeat(m: Model, day: Day, at: number, outdoor: number): void {
  assemble(m, day, at, outdoor);
  sweepChains(m.chains, m.rooms, m.boundary, m.rhs);
  emitterLimits(m);
  setTargets(m, day.setpoints, at);
  holdAtSettings(m);
  if (exceedSources(m)) holdAtSettings(m);
}

/**
 * Take what was solved for as true: move every store to the end of the step, and book the step.
 *
 * @param flows  BOOK records, this month's from record `row` on
 */
export function settleHeat(
  m: Model,
  day: Day,
  at: number,
  outdoor: number,
  flows: Float64Array,
  row: number,
): void {
  settleEmitters(m);
  settleRooms(m);
  settleChains(m.chains, m.rooms, m.boundary, m.dt, flows, row);
  bookHeat(m, day, at, outdoor, flows, row);
}

/**
 * Expect each room's temperature in the middle of the coming step: as far beyond the end of the last
 * step as its mean lay before it. For a steady rise that is linear; after a jump that died out within
 * the step, mean and end are close and nothing is carried on. [°C]
 */
export function guessTemperatures({ rooms, roomCount }: Model): void {
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    rooms[r + GUESS] = 2 * rooms[r + TEMPERATURE]! - rooms[r + MEAN]!;
  }
}

/**
 * Whether some room turned out far from the temperature its air flows were worked out with, as
 * happens when a window or a door opens. If so the guesses are mended, for one more try.
 */
export function mendGuesses({ rooms, roomCount, solution }: Model): boolean {
  let far = false;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const off = solution[i]! - rooms[r + GUESS]!;
    if (off > FAR || off < -FAR) far = true;
  }
  if (!far) return false;
  for (let i = 0; i < roomCount; i++) rooms[i * ROOM_STRIDE + GUESS] = solution[i]!;
  return true;
}

function assemble(m: Model, day: Day, at: number, outdoor: number): void {
  const { rooms, roomCount, dt, airCp, fixed, flow, matrix, rhs, evaporation } = m;
  const { diagonal } = m.elimination;
  const { peopleHeat, thingsHeat, drying } = day;
  for (let k = 0; k < matrix.length; k++) matrix[k] = fixed[k]! + airCp * flow[k]!;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = diagonal[i]!;
    const pane = rooms[r + PANE_UA]!;
    const capacity = rooms[r + AIR_CAPACITY]!;
    const rate = airCp * flow[k]! + pane + rooms[r + CHAIN_G]!;
    const weight = implicitWeight((rate * dt) / capacity);
    const store = capacity / (weight * dt);
    rooms[r + OVER_WEIGHT] = 1 / weight;
    matrix[k] = matrix[k]! + pane + store;
    const people = peopleHeat[at + i]!;
    const things = thingsHeat[at + i]!;
    const surfaced = rooms[r + SURFACED]!;
    const sun = rooms[r + SUN]!;
    const radiated = rooms[r + DEVICE_RADIANT]!;
    const radiant = surfaced * (people * PEOPLE_RADIANT + things * THINGS_RADIANT + radiated);
    const sunny = surfaced * (1 - rooms[r + SUN_TO_AIR]!) * sun;
    rooms[r + RADIANT_GAIN] = radiant;
    rooms[r + SUN_ON_SURFACES] = sunny;
    rooms[r + WARM_SURFACE] = 0;
    const devices = rooms[r + DEVICE_HEAT]! + radiated;
    const given = people + things + devices - radiant + sun - sunny;
    const taken = evaporation * drying[at + i]! - rooms[r + PHASE]!;
    const exchange = airCp * rooms[r + EXCHANGE]! + pane;
    const supplied = airCp * rooms[r + FAN]! * rooms[r + FAN_T]!;
    rhs[i] = store * rooms[r + TEMPERATURE]! + exchange * outdoor + supplied + given - taken;
  }
}

/** The mean over the step that would end it exactly at each room's setting; heat per kelvin of a band. */
function setTargets({ rooms, roomCount, held }: Model, settings: Float64Array, at: number): void {
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const setting = settings[at + i]!;
    rooms[r + SETTING] = setting;
    if (rooms[r + HEATED] === 0 || setting === Number.NEGATIVE_INFINITY) {
      rooms[r + TARGET] = Number.NEGATIVE_INFINITY;
      held[i] = AT_LEAST;
    } else {
      rooms[r + TARGET] = endingAt(rooms, r, setting);
      const band = rooms[r + BAND]!;
      rooms[r + GAIN] = band > 0 ? rooms[r + HIGH]! / band : 0;
    }
  }
}

/** The mean over the step after which a room stands at a temperature. [°C] */
function endingAt(rooms: Float64Array, r: number, temperature: number): number {
  const now = rooms[r + TEMPERATURE]!;
  return now + (temperature - now) / rooms[r + OVER_WEIGHT]!;
}

/**
 * Find the rooms' temperatures and the heat their emitters give, all at once: every heated room is
 * either below its setting with its emitters at their most, at its setting with them in between, or
 * above it with them at their least.
 *
 * Active set: guess which (as in the step before), solve, move every room that breaks its guess,
 * solve again. The matrix is an M-matrix, so warming one room never cools another and the search
 * ends; after MANY rounds rooms are moved one at a time, which cannot cycle.
 */
function holdAtSettings(m: Model): void {
  const { rooms, roomCount, held, solution } = m;
  for (let round = 0; ; round++) {
    solveHeld(m);
    let moved = false;
    for (let i = 0; i < roomCount; i++) {
      const r = i * ROOM_STRIDE;
      const target = rooms[r + TARGET]!;
      if (target === Number.NEGATIVE_INFINITY) continue;
      const now = held[i]!;
      const to =
        now === AT_SETTING
          ? limitOf(rooms[r + EMITTED]!, rooms[r + LOW]!, rooms[r + HIGH]!)
          : sideOf(now, solution[i]!, turningPoint(rooms, r, now));
      if (to === now) continue;
      held[i] = to;
      moved = true;
      if (round > MANY) break;
    }
    if (!moved || round > MANY + 4 * roomCount) return;
  }
}

/** The mean beyond which emitters at their least or most would begin to give something between. [°C] */
function turningPoint(rooms: Float64Array, r: number, now: number): number {
  const gain = rooms[r + GAIN]!;
  if (gain === 0) return rooms[r + TARGET]!;
  const heat = now === AT_LEAST ? rooms[r + LOW]! : rooms[r + HIGH]!;
  return endingAt(rooms, r, rooms[r + SETTING]! - heat / gain);
}

function limitOf(heat: number, low: number, high: number): number {
  if (heat < low) return AT_LEAST;
  return heat > high ? AT_MOST : AT_SETTING;
}

function sideOf(now: number, mean: number, target: number): number {
  if (now === AT_LEAST) return mean < target - CLOSE ? AT_SETTING : AT_LEAST;
  return mean > target + CLOSE ? AT_SETTING : AT_MOST;
}

/** Solve for the means with every emitter as `held` says; find the heat of those in between. */
function solveHeld(m: Model): void {
  const { rooms, roomCount, elimination, held, matrix, matrixWork, rhs, rhsWork, solution } = m;
  const { rowStart, rowPosition, rowColumn, diagonal } = elimination;
  for (let k = 0; k < matrix.length; k++) matrixWork[k] = matrix[k]!;
  let pinned = 0;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    if (held[i] === AT_SETTING && rooms[r + GAIN]! > 0) {
      leanRow(m, i);
      pinned++;
    } else if (held[i] === AT_SETTING) {
      for (let k = rowStart[i]!; k < rowStart[i + 1]!; k++) matrixWork[rowPosition[k]!] = 0;
      matrixWork[diagonal[i]!] = 1;
      rhsWork[i] = rooms[r + TARGET]!;
      pinned++;
    } else {
      const heat = held[i] === AT_MOST ? rooms[r + HIGH]! : rooms[r + LOW]!;
      rooms[r + EMITTED] = heat;
      rhsWork[i] = rhs[i]! + rooms[r + REACH]! * heat;
    }
  }
  solveSparse(elimination, matrixWork, rhsWork, solution);
  if (pinned === 0) return;
  for (let i = 0; i < roomCount; i++) {
    if (held[i] !== AT_SETTING) continue;
    const r = i * ROOM_STRIDE;
    const gain = rooms[r + GAIN]!;
    if (gain > 0) {
      const now = rooms[r + TEMPERATURE]!;
      const end = now + (solution[i]! - now) * rooms[r + OVER_WEIGHT]!;
      rooms[r + EMITTED] = gain * (rooms[r + SETTING]! - end);
      continue;
    }
    let needed = -rhs[i]!;
    for (let k = rowStart[i]!; k < rowStart[i + 1]!; k++) {
      needed += matrix[rowPosition[k]!]! * solution[rowColumn[k]!]!;
    }
    rooms[r + EMITTED] = needed / rooms[r + REACH]!;
  }
}

/** Within a band the emitters give so much per kelvin that the end of the step lies below the setting. */
function leanRow({ rooms, elimination, matrixWork, rhs, rhsWork }: Model, i: number): void {
  const r = i * ROOM_STRIDE;
  const k = elimination.diagonal[i]!;
  const overWeight = rooms[r + OVER_WEIGHT]!;
  const push = rooms[r + REACH]! * rooms[r + GAIN]!;
  const kept = (1 - overWeight) * rooms[r + TEMPERATURE]!;
  matrixWork[k] = matrixWork[k]! + push * overWeight;
  rhsWork[i] = rhs[i]! + push * (rooms[r + SETTING]! - kept);
}

function settleRooms({ rooms, roomCount, solution }: Model): void {
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const now = rooms[r + TEMPERATURE]!;
    const mean = solution[i]!;
    rooms[r + MEAN] = mean;
    rooms[r + TEMPERATURE] = now + (mean - now) * rooms[r + OVER_WEIGHT]!;
  }
}

function bookHeat(
  m: Model,
  day: Day,
  at: number,
  outdoor: number,
  flows: Float64Array,
  row: number,
): void {
  const { rooms, roomCount, dt, airCp, evaporation, doors, frames, doorCount } = m;
  const { peopleHeat, thingsHeat, drying } = day;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = (row + i) * BOOK_STRIDE;
    const fall = (outdoor - rooms[r + MEAN]!) * dt;
    const carried = airCp * fall;
    const phase = rooms[r + PHASE]! - evaporation * drying[at + i]!;
    flows[k + HEATING] = flows[k + HEATING]! + rooms[r + EMITTED]! * dt;
    flows[k + PEOPLE] = flows[k + PEOPLE]! + peopleHeat[at + i]! * dt;
    flows[k + THINGS] = flows[k + THINGS]! + thingsHeat[at + i]! * dt;
    flows[k + SUNSHINE] = flows[k + SUNSHINE]! + rooms[r + SUN]! * dt;
    flows[k + PANES] = flows[k + PANES]! + rooms[r + PANE_UA]! * fall;
    flows[k + LEAKAGE] = flows[k + LEAKAGE]! + rooms[r + LEAK]! * carried;
    flows[k + OPENINGS] = flows[k + OPENINGS]! + rooms[r + OPENING]! * carried;
    const supplied = airCp * rooms[r + FAN]! * (rooms[r + FAN_T]! - rooms[r + MEAN]!);
    const devices = rooms[r + DEVICE_HEAT]! + rooms[r + DEVICE_RADIANT]!;
    flows[k + FANS] = flows[k + FANS]! + supplied * dt;
    flows[k + DEVICES] = flows[k + DEVICES]! + devices * dt;
    flows[k + PHASE_CHANGE] = flows[k + PHASE_CHANGE]! + phase * dt;
  }
  for (let d = 0; d < doorCount; d++) {
    const a = frames[d * FRAME_STRIDE + A]!;
    const b = frames[d * FRAME_STRIDE + B]!;
    const rise = airCp * (rooms[a * ROOM_STRIDE + MEAN]! - rooms[b * ROOM_STRIDE + MEAN]!) * dt;
    const ka = (row + a) * BOOK_STRIDE + DOORWAYS;
    const kb = (row + b) * BOOK_STRIDE + DOORWAYS;
    flows[ka] = flows[ka]! - doors[d * DOOR_STRIDE + BACK]! * rise;
    flows[kb] = flows[kb]! + doors[d * DOOR_STRIDE + FORTH]! * rise;
  }
}

const { temperature: TEMPERATURE, meanTemperature: MEAN } = ROOM;
const { setting: SETTING, band: BAND, gain: GAIN } = ROOM;
const { guess: GUESS, target: TARGET, heatOverWeight: OVER_WEIGHT, emitted: EMITTED } = ROOM;
const {
  low: LOW,
  high: HIGH,
  phase: PHASE,
  sun: SUN,
  deviceHeat: DEVICE_HEAT,
  deviceRadiant: DEVICE_RADIANT,
} = ROOM;
const {
  radiantGain: RADIANT_GAIN,
  sunOnSurfaces: SUN_ON_SURFACES,
  warmSurface: WARM_SURFACE,
} = ROOM;
const { airCapacity: AIR_CAPACITY, paneUA: PANE_UA, chainG: CHAIN_G, surfaced: SURFACED } = ROOM;
const { sunToAir: SUN_TO_AIR, heated: HEATED, reach: REACH } = ROOM;
const { leak: LEAK, opening: OPENING, fan: FAN, fanTemperature: FAN_T, exchange: EXCHANGE } = ROOM;
const { forth: FORTH, back: BACK } = DOOR;
const { a: A, b: B } = FRAME;

const term = (name: EnergyTerm): number => ENERGY_TERMS.indexOf(name);
const HEATING = term('heating');
const PEOPLE = term('people');
const THINGS = term('things');
const SUNSHINE = term('sun');
const PANES = term('panes');
const LEAKAGE = term('leakage');
const OPENINGS = term('openings');
const FANS = term('fans');
const DOORWAYS = term('doorways');
const DEVICES = term('devices');
const PHASE_CHANGE = term('phaseChange');

const AT_LEAST = 0;
const AT_SETTING = 1;
const AT_MOST = 2;

/** A guess this far off is wrong by what a step of an open window or door does, not by a curve. [K] */
const FAR = 0.5;

/** A room this near its setting is at it; far below anything a sensor or a person can tell. [K] */
const CLOSE = 1e-9;
/** Rounds of the active set before rooms are moved one at a time. */
const MANY = 20;

/** Radiant share of sensible heat; the rest warms the air. Common practice, handbook tables. [-] */
const PEOPLE_RADIANT = 0.5;
const THINGS_RADIANT = 0.4;

const ROOM_STRIDE = ROOM.stride;
const DOOR_STRIDE = DOOR.stride;
const FRAME_STRIDE = FRAME.stride;
const BOOK_STRIDE = BOOK.stride;
