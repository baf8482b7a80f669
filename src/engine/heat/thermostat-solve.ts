import type { i32 } from '../../units/portable.ts';
import { holdTemperatures, isHeld } from '../imposed/hold-rooms.ts';
import { TEMPERATURE as HELD } from '../layout/lay-out-imposed.ts';
import type { Model } from '../layout/model.ts';
import { ROOM } from '../layout/state-layout.ts';
import { solveSparse } from '../numerics/sparse.ts';

/**
 * Active-set solution of room temperatures, emitter heat and cooling. Every controlled room is in one
 * of five states: below its heating setpoint with its emitters at maximum output; at that setpoint
 * with them in between; between both setpoints with them at minimum output and nothing cooling; at its
 * cooling setpoint with its coolers in between; above it with them at maximum output.
 *
 * Starts from the states of the previous step, solves, changes the state of every room that violates
 * it, and solves again. Warming one room never cools another, so the search terminates; after MANY
 * iterations rooms change one at a time, which cannot cycle.
 */
export function solveThermostats(m: Model): void {
  const { roomCount, held } = m;
  for (let round = 0; ; round++) {
    solveHeld(m);
    let moved = false;
    for (let i = 0; i < roomCount; i++) {
      const to = nextState(m, i);
      if (to === held[i]!) continue;
      held[i] = to;
      moved = true;
      if (round > MANY) break;
    }
    if (!moved || round > MANY + 4 * roomCount) return;
  }
}

/** The state that the solution asks of a room: its own, or the one next to it. */
function nextState({ rooms, held, heat: { solution } }: Model, i: i32): i32 {
  const r = i * ROOM_STRIDE;
  const now = held[i]!;
  if (now === AT_SETTING) {
    const given = rooms[r + EMITTED]!;
    if (given < rooms[r + LOW]!) return AT_LEAST;
    return given > rooms[r + HIGH]! ? AT_MOST : AT_SETTING;
  }
  if (now === COOLING_TO_SETTING) {
    const removed = rooms[r + COOLING]!;
    if (removed < 0) return AT_LEAST;
    return removed > rooms[r + COOL_MOST]! ? COOLING_AT_MOST : COOLING_TO_SETTING;
  }
  const felt =
    rooms[r + FELT]! +
    rooms[r + FELT_AIR]! * solution[2 * i + 1]! +
    rooms[r + FELT_RADIANT]! * solution[2 * i]! -
    rooms[r + FELT_PER_RADIATED]! * radiatedOf(rooms, r);
  if (now === AT_MOST) {
    return felt > rooms[r + SETTING]! - rooms[r + BAND]! + CLOSE ? AT_SETTING : AT_MOST;
  }
  if (now === COOLING_AT_MOST) {
    return felt < rooms[r + COOL_SETTING]! - CLOSE ? COOLING_TO_SETTING : COOLING_AT_MOST;
  }
  if (felt < rooms[r + SETTING]! - CLOSE) return AT_SETTING;
  const tooWarm = felt > rooms[r + COOL_SETTING]! + CLOSE && rooms[r + COOL_MOST]! > 0;
  return tooWarm ? COOLING_TO_SETTING : AT_LEAST;
}

/** Heat that emitters radiate onto the surfaces less what these radiate to coolers. [W] */
function radiatedOf(rooms: Float64Array, r: i32): number {
  return (
    rooms[r + EMITTED]! * rooms[r + RADIANT_SHARE]! - rooms[r + COOLING]! * rooms[r + COOL_SHARE]!
  );
}

/** Solve for the means with every room in its active-set state; find the heat of those at a setpoint. */
function solveHeld(m: Model): void {
  const { rooms, roomCount, held } = m;
  const { elimination, matrix, work, rhs, rhsWork, solution } = m.heat;
  for (let k = 0; k < elimination.size; k++) work[k] = matrix[k]!;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const state = held[i]!;
    if (state === AT_SETTING) {
      rooms[r + COOLING] = 0;
      controlHeating(m, i);
      continue;
    }
    const given = state === AT_MOST ? rooms[r + HIGH]! : rooms[r + LOW]!;
    rooms[r + EMITTED] = given;
    if (state === COOLING_TO_SETTING) {
      controlCooling(m, i);
      continue;
    }
    rooms[r + COOLING] = state === COOLING_AT_MOST ? rooms[r + COOL_MOST]! : 0;
    const radiated = radiatedOf(rooms, r);
    rhsWork[2 * i] = rhs[2 * i]! + radiated;
    rhsWork[2 * i + 1] = rhs[2 * i + 1]! + given - rooms[r + COOLING]! - radiated;
  }
  if (m.imposed.flags[HELD] === 1) holdTemperatures(m);
  solveSparse(elimination, work, rhsWork, solution);
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    if (held[i] === AT_SETTING) rooms[r + EMITTED] = findHeat(m, i);
    else if (held[i] === COOLING_TO_SETTING) rooms[r + COOLING] = rooms[r + LOW]! - findHeat(m, i);
  }
}

/**
 * Let a room's thermostat set the heat of its emitters by what it feels:
 *
 *     felt = setting - band (heat - LOW) / (HIGH - LOW)
 */
function controlHeating(m: Model, i: i32): void {
  const { rooms } = m;
  const r = i * ROOM_STRIDE;
  const low = rooms[r + LOW]!;
  const perWatt = rooms[r + BAND]! / Math.max(rooms[r + HIGH]! - low, LEAST_SPAN);
  const share = rooms[r + RADIANT_SHARE]!;
  control(m, i, share, perWatt, rooms[r + SETTING]! + perWatt * low, 0);
}

/** Let a room's thermostat set what its coolers remove so that it feels their setpoint. */
function controlCooling(m: Model, i: i32): void {
  const { rooms } = m;
  const r = i * ROOM_STRIDE;
  const share = rooms[r + COOL_SHARE]!;
  // What emitters still give is counted into the heat that is found, and so divided as that is.
  const onto = (rooms[r + RADIANT_SHARE]! - share) * rooms[r + LOW]!;
  control(m, i, share, 0, rooms[r + COOL_SETTING]! + rooms[r + FELT_PER_RADIATED]! * onto, onto);
}

/**
 * Put in place of a room's two equations what follows from them for any heat given to it, and what its
 * thermostat makes of the temperature it feels: felt + perWatt heat = setting.
 *
 * The heat itself is the sum of both equations, because what does not go to the air goes to the
 * radiant node.
 *
 * @param share     of that heat which goes to the radiant node [-]
 * @param onto      heat that moves from the air to the radiant node besides [W]
 */
function control(
  { rooms, heat }: Model,
  i: i32,
  share: number,
  perWatt: number,
  setting: number,
  onto: number,
): void {
  const { start, radiantRow, airRow, elimination, matrix, work, rhs, rhsWork } = heat;
  const r = i * ROOM_STRIDE;
  const rest = 1 - share;
  const perHeat = perWatt - rooms[r + FELT_PER_RADIATED]! * share;
  const end = start[i + 1]!;
  for (let q = start[i]!; q < end; q++) {
    const a = airRow[q]!;
    const b = radiantRow[q]!;
    const ofAir = matrix[a]!;
    const ofRadiant = matrix[b]!;
    work[b] = rest * ofRadiant - share * ofAir;
    work[a] = perHeat * (ofAir + ofRadiant);
  }
  const own = elimination.diagonal[2 * i + 1]!;
  const across = heat.across[i]!;
  work[own] = work[own]! + rooms[r + FELT_AIR]!;
  work[across] = work[across]! + rooms[r + FELT_RADIANT]!;
  const toAir = rhs[2 * i + 1]! - onto;
  const toRadiant = rhs[2 * i]! + onto;
  rhsWork[2 * i] = rest * toRadiant - share * toAir;
  rhsWork[2 * i + 1] = setting - rooms[r + FELT]! + perHeat * (toAir + toRadiant);
}

/** Heat that a room must have been given for its solution to hold. [W] */
function findHeat({ heat }: Model, i: i32): number {
  const { start, radiantRow, airRow, column, matrix, rhs, solution } = heat;
  let needed = -rhs[2 * i]! - rhs[2 * i + 1]!;
  const end = start[i + 1]!;
  for (let q = start[i]!; q < end; q++) {
    needed += (matrix[radiantRow[q]!]! + matrix[airRow[q]!]!) * solution[column[q]!]!;
  }
  return needed;
}

/**
 * What each thermostat holds, and what it will feel at the end of the step as a linear function of the
 * step's means: the air's end, and the surfaces' mean carried on by half of what it has changed since
 * the step before.
 */
export function setTargets(m: Model, settings: Float64Array, coolSettings: Float64Array): void {
  const { rooms, roomCount, held } = m;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const heats = rooms[r + HEATED] === 1 && settings[i]! !== Number.NEGATIVE_INFINITY;
    const wanted = coolSettings[i]! !== Number.POSITIVE_INFINITY && !isHeld(m, i);
    const cools = wanted && rooms[r + COOL_MOST]! > 0;
    rooms[r + SETTING] = heats ? settings[i]! : Number.NEGATIVE_INFINITY;
    rooms[r + COOL_SETTING] = cools ? coolSettings[i]! : Number.POSITIVE_INFINITY;
    const state = held[i]!;
    if (!heats && (state === AT_SETTING || state === AT_MOST)) held[i] = AT_LEAST;
    if (!cools && state > AT_MOST) held[i] = AT_LEAST;
    if (heats || cools) setFelt(rooms, r);
  }
}

function setFelt(rooms: Float64Array, r: i32): void {
  const g = rooms[r + RADIANT_G]!;
  const ofSurfaces = g > 0 ? rooms[r + SENSOR_RADIANT]! : 0;
  const ofAir = 1 - ofSurfaces;
  const overWeight = rooms[r + OVER_WEIGHT]!;
  const perRadiant = AHEAD * ofSurfaces;
  rooms[r + FELT_AIR] = ofAir * overWeight;
  rooms[r + FELT_RADIANT] = perRadiant;
  rooms[r + FELT_PER_RADIATED] = 0;
  rooms[r + FELT] = ofAir * (1 - overWeight) * rooms[r + TEMPERATURE]!;
  if (ofSurfaces === 0) return;
  rooms[r + FELT_PER_RADIATED] = perRadiant / g;
  rooms[r + FELT] =
    rooms[r + FELT]! +
    (1 - AHEAD) * ofSurfaces * rooms[r + RADIANT_MEAN]! -
    (perRadiant * rooms[r + RADIANT_GAIN]!) / g;
}

/**
 * What a room's thermostat feels at the end of a step, for control; the air's end is known, the
 * surfaces' mean of the step before still noted.
 *
 * @param surfaces  their mean over the step [°C]
 */
export function noteFelt(rooms: Float64Array, r: i32, surfaces: number): void {
  const end = rooms[r + TEMPERATURE]!;
  const ofSurfaces = rooms[r + RADIANT_G]! > 0 ? rooms[r + SENSOR_RADIANT]! : 0;
  const ahead = surfaces + (AHEAD - 1) * (surfaces - rooms[r + RADIANT_MEAN]!);
  rooms[r + FELT_NOW] = end + ofSurfaces * (ahead - end);
}

const { temperature: TEMPERATURE, radiantMean: RADIANT_MEAN, radiantGain: RADIANT_GAIN } = ROOM;
const { setting: SETTING, band: BAND, felt: FELT, feltAir: FELT_AIR } = ROOM;
const {
  feltRadiant: FELT_RADIANT,
  feltPerRadiated: FELT_PER_RADIATED,
  sensorRadiant: SENSOR_RADIANT,
  feltNow: FELT_NOW,
} = ROOM;
const { heatOverWeight: OVER_WEIGHT, emitted: EMITTED, low: LOW, high: HIGH } = ROOM;
const { cooling: COOLING, coolSetting: COOL_SETTING, coolMost: COOL_MOST } = ROOM;
const { coolShare: COOL_SHARE } = ROOM;
const { heated: HEATED, radiantShare: RADIANT_SHARE, radiantG: RADIANT_G } = ROOM;

const AT_LEAST = 0;
const AT_SETTING = 1;
const AT_MOST = 2;
const COOLING_TO_SETTING = 3;
const COOLING_AT_MOST = 4;

/** The end of a step lies half a step beyond its mean: mean + half of (mean - mean before). */
const AHEAD = 1.5;
/** A room this near its setting is at it; far below anything a sensor or a person can tell. [K] */
const CLOSE = 1e-9;
/** Stands in for the range of an emitter that can give nothing in this step. [W] */
const LEAST_SPAN = 1e-9;
/** Rounds of the active set before rooms are moved one at a time. */
const MANY = 20;

const ROOM_STRIDE = ROOM.stride;
