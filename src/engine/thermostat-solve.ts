import type { Model } from './model.ts';
import { solveSparse } from './numerics/sparse.ts';
import { ROOM } from './state-layout.ts';

/**
 * Active-set solution of room temperatures and emitter heat: every heated room is either below its
 * setpoint with its emitters at maximum output, at its setpoint with them in between, or above it with
 * them at minimum output.
 *
 * Starts from the states of the previous step, solves, changes the state of every room that violates
 * it, and solves again. Warming one room never cools another, so the search terminates; after MANY
 * iterations rooms change one at a time, which cannot cycle.
 */
export function solveThermostats(m: Model): void {
  const { rooms, roomCount, held } = m;
  const { solution } = m.heat;
  for (let round = 0; ; round++) {
    solveHeld(m);
    let moved = false;
    for (let i = 0; i < roomCount; i++) {
      const r = i * ROOM_STRIDE;
      const setting = rooms[r + SETTING]!;
      if (setting === Number.NEGATIVE_INFINITY) continue;
      const now = held[i]!;
      const heat = rooms[r + EMITTED]!;
      let to = now;
      if (now === AT_SETTING) {
        if (heat < rooms[r + LOW]!) to = AT_LEAST;
        else if (heat > rooms[r + HIGH]!) to = AT_MOST;
      } else {
        const felt =
          rooms[r + FELT]! +
          rooms[r + FELT_AIR]! * solution[2 * i + 1]! +
          rooms[r + FELT_RADIANT]! * solution[2 * i]! -
          rooms[r + FELT_HEAT]! * heat;
        if (now === AT_LEAST && felt < setting - CLOSE) to = AT_SETTING;
        else if (now === AT_MOST && felt > setting - rooms[r + BAND]! + CLOSE) to = AT_SETTING;
      }
      if (to === now) continue;
      held[i] = to;
      moved = true;
      if (round > MANY) break;
    }
    if (!moved || round > MANY + 4 * roomCount) return;
  }
}

/** Solve for the means with every room in its active-set state; find the heat of those at their setpoints. */
function solveHeld(m: Model): void {
  const { rooms, roomCount, held } = m;
  const { elimination, matrix, work, rhs, rhsWork, solution } = m.heat;
  for (let k = 0; k < matrix.length; k++) work[k] = matrix[k]!;
  for (let i = 0; i < roomCount; i++) {
    if (held[i] === AT_SETTING) {
      control(m, i);
      continue;
    }
    const r = i * ROOM_STRIDE;
    const heat = held[i] === AT_MOST ? rooms[r + HIGH]! : rooms[r + LOW]!;
    const radiated = heat * rooms[r + RADIANT_SHARE]!;
    rooms[r + EMITTED] = heat;
    rhsWork[2 * i] = rhs[2 * i]! + radiated;
    rhsWork[2 * i + 1] = rhs[2 * i + 1]! + heat - radiated;
  }
  solveSparse(elimination, work, rhsWork, solution);
  for (let i = 0; i < roomCount; i++) if (held[i] === AT_SETTING) findHeat(m, i);
}

/**
 * Put in place of a room's two equations what follows from them for any heat of its emitters, and what
 * its thermostat makes of the temperature it feels:
 *
 *     felt = setting - band (heat - LOW) / (HIGH - LOW)
 *
 * The heat itself is the sum of both equations, because what does not go to the air goes to the
 * radiant node.
 */
function control({ rooms, heat }: Model, i: number): void {
  const { start, radiantRow, airRow, elimination, matrix, work, rhs, rhsWork } = heat;
  const r = i * ROOM_STRIDE;
  const share = rooms[r + RADIANT_SHARE]!;
  const rest = 1 - share;
  const low = rooms[r + LOW]!;
  const perWatt = rooms[r + BAND]! / Math.max(rooms[r + HIGH]! - low, LEAST_SPAN);
  const feltHeat = perWatt - rooms[r + FELT_HEAT]!;
  const end = start[i + 1]!;
  for (let q = start[i]!; q < end; q++) {
    const a = airRow[q]!;
    const b = radiantRow[q]!;
    const ofAir = matrix[a]!;
    const ofRadiant = matrix[b]!;
    work[b] = rest * ofRadiant - share * ofAir;
    work[a] = feltHeat * (ofAir + ofRadiant);
  }
  const own = elimination.diagonal[2 * i + 1]!;
  const across = heat.across[i]!;
  work[own] = work[own]! + rooms[r + FELT_AIR]!;
  work[across] = work[across]! + rooms[r + FELT_RADIANT]!;
  const toAir = rhs[2 * i + 1]!;
  const toRadiant = rhs[2 * i]!;
  rhsWork[2 * i] = rest * toRadiant - share * toAir;
  rhsWork[2 * i + 1] =
    rooms[r + SETTING]! - rooms[r + FELT]! + perWatt * low + feltHeat * (toAir + toRadiant);
}

/** Heat that a room's emitters must have given for its solution to hold. [W] */
function findHeat({ rooms, heat }: Model, i: number): void {
  const { start, radiantRow, airRow, column, matrix, rhs, solution } = heat;
  let needed = -rhs[2 * i]! - rhs[2 * i + 1]!;
  const end = start[i + 1]!;
  for (let q = start[i]!; q < end; q++) {
    needed += (matrix[radiantRow[q]!]! + matrix[airRow[q]!]!) * solution[column[q]!]!;
  }
  rooms[i * ROOM_STRIDE + EMITTED] = needed;
}

/**
 * What each thermostat holds, and what it will feel at the end of the step as a linear function of the
 * step's means: the air's end, and the surfaces' mean carried on by half of what it has changed since
 * the step before.
 */
export function setTargets({ rooms, roomCount, held }: Model, settings: Float64Array): void {
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const setting = settings[i]!;
    if (rooms[r + HEATED] === 0 || setting === Number.NEGATIVE_INFINITY) {
      rooms[r + SETTING] = Number.NEGATIVE_INFINITY;
      held[i] = AT_LEAST;
      continue;
    }
    rooms[r + SETTING] = setting;
    const g = rooms[r + RADIANT_G]!;
    const ofSurfaces = g > 0 ? rooms[r + SENSOR_RADIANT]! : 0;
    const ofAir = 1 - ofSurfaces;
    const overWeight = rooms[r + OVER_WEIGHT]!;
    const perRadiant = AHEAD * ofSurfaces;
    rooms[r + FELT_AIR] = ofAir * overWeight;
    rooms[r + FELT_RADIANT] = perRadiant;
    rooms[r + FELT] = ofAir * (1 - overWeight) * rooms[r + TEMPERATURE]!;
    rooms[r + FELT_HEAT] = 0;
    if (ofSurfaces === 0) continue;
    rooms[r + FELT] =
      rooms[r + FELT]! +
      (1 - AHEAD) * ofSurfaces * rooms[r + RADIANT_MEAN]! -
      (perRadiant * rooms[r + RADIANT_GAIN]!) / g;
    rooms[r + FELT_HEAT] = (perRadiant * rooms[r + RADIANT_SHARE]!) / g;
  }
}

const { temperature: TEMPERATURE, radiantMean: RADIANT_MEAN, radiantGain: RADIANT_GAIN } = ROOM;
const { setting: SETTING, band: BAND, felt: FELT, feltAir: FELT_AIR } = ROOM;
const { feltRadiant: FELT_RADIANT, feltHeat: FELT_HEAT, sensorRadiant: SENSOR_RADIANT } = ROOM;
const { heatOverWeight: OVER_WEIGHT, emitted: EMITTED, low: LOW, high: HIGH } = ROOM;
const { heated: HEATED, radiantShare: RADIANT_SHARE, radiantG: RADIANT_G } = ROOM;

const AT_LEAST = 0;
const AT_SETTING = 1;
const AT_MOST = 2;

/** The end of a step lies half a step beyond its mean: mean + half of (mean - mean before). */
const AHEAD = 1.5;
/** A room this near its setting is at it; far below anything a sensor or a person can tell. [K] */
const CLOSE = 1e-9;
/** Stands in for the range of an emitter that can give nothing in this step. [W] */
const LEAST_SPAN = 1e-9;
/** Rounds of the active set before rooms are moved one at a time. */
const MANY = 20;

const ROOM_STRIDE = ROOM.stride;
