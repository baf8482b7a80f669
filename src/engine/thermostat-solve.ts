import type { Model } from './model.ts';
import { solveSparse } from './numerics/sparse.ts';
import { ROOM } from './state-layout.ts';

/**
 * Active-set solution of room temperatures and emitter heat: every heated room is either below its
 * setpoint with its emitters at maximum output, at its setpoint with them in between, or above it with
 * them at minimum output.
 *
 * Starts from the states of the previous step, solves, changes the state of every room that violates
 * it, and solves again. The matrix is an M-matrix, so warming one room never cools another and the
 * search terminates; after MANY iterations rooms change one at a time, which cannot cycle.
 */
export function solveThermostats(m: Model): void {
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

/** Mean temperature beyond which emitters leave their minimum or maximum output. [°C] */
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

/** Solve for the means with every room in its active-set state; find the heat of those at their setpoints. */
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

/** The mean over the step that would end it exactly at each room's setting; heat per kelvin of a band. */
export function setTargets({ rooms, roomCount, held }: Model, settings: Float64Array): void {
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const setting = settings[i]!;
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

const { temperature: TEMPERATURE } = ROOM;
const { setting: SETTING, band: BAND, gain: GAIN } = ROOM;
const { target: TARGET, heatOverWeight: OVER_WEIGHT, emitted: EMITTED } = ROOM;
const { low: LOW, high: HIGH } = ROOM;
const { heated: HEATED, reach: REACH } = ROOM;

const AT_LEAST = 0;
const AT_SETTING = 1;
const AT_MOST = 2;

/** A room this near its setting is at it; far below anything a sensor or a person can tell. [K] */
const CLOSE = 1e-9;
/** Rounds of the active set before rooms are moved one at a time. */
const MANY = 20;

const ROOM_STRIDE = ROOM.stride;
