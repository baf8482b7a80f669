import type { Day } from '../control/day.ts';
import type { Air } from './air.ts';
import type { Books } from './books.ts';
import { settleChains, sweepChains } from './chains.ts';
import { emitterLimits, exceedSources, shareOut } from './emitters.ts';
import type { Model } from './model.ts';
import { implicitWeight } from './numerics/implicit-weight.ts';
import { solveSparse } from './numerics/sparse.ts';

/** Everything about heat that changes from step to step, and the scratch to change it with. */
export interface HeatState {
  /** Per room: air at the start of the step, at the start of the one before, mean over it. [°C] */
  readonly temperature: Float64Array;
  readonly before: Float64Array;
  readonly mean: Float64Array;
  /** Per room: guess for the middle of the step. [°C] */
  readonly guess: Float64Array;
  /** Per room: all emitters together, mean over the step, and the radiant part of it. [W] */
  readonly emitted: Float64Array;
  readonly emittedRadiant: Float64Array;
  /** Per room: heat freed (positive) or taken by condensing and sorption in the step before. [W] */
  readonly phase: Float64Array;
  /** Per room: sun through panes; radiant gains; sun on surfaces. [W] */
  readonly sun: Float64Array;
  readonly radiant: Float64Array;
  readonly sunOnSurfaces: Float64Array;
  /** Per room: heat of devices. [W] */
  readonly devices: Float64Array;
  /** Boundary temperatures, mean over the step. [°C] */
  readonly boundary: Float64Array;
  /** Per emitter: output at the start of the step, mean over it, and mean behind the valve. [W] */
  readonly output: Float64Array;
  readonly outputMean: Float64Array;
  readonly valveMean: Float64Array;
  /** Per emitter: most its valve can let through in this step. [W] */
  readonly most: Float64Array;
  /** Per source: what its emitters drew, mean over the step. [W] */
  readonly drawn: Float64Array;
  /** Per room: least and most its emitters can give in this step [W]; what they are held at. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly held: Uint8Array;
  /** Per room: storage [W/K], one over the weight [-], and mean that ends the step at the setting [°C]. */
  readonly storage: Float64Array;
  readonly overWeight: Float64Array;
  readonly target: Float64Array;
  /** Matrix and right-hand side, as assembled and as solved. */
  readonly matrix: Float64Array;
  readonly rhs: Float64Array;
  readonly matrixWork: Float64Array;
  readonly rhsWork: Float64Array;
}

export function createHeat(m: Model): HeatState {
  const perRoom = (): Float64Array => new Float64Array(m.rooms);
  const perEmitter = (): Float64Array => new Float64Array(m.emitters.count);
  const perValue = (): Float64Array => new Float64Array(m.elimination.size);
  return {
    temperature: perRoom(),
    before: perRoom(),
    mean: perRoom(),
    guess: perRoom(),
    emitted: perRoom(),
    emittedRadiant: perRoom(),
    phase: perRoom(),
    sun: perRoom(),
    radiant: perRoom(),
    sunOnSurfaces: perRoom(),
    devices: perRoom(),
    boundary: new Float64Array(m.boundaries.length),
    output: perEmitter(),
    outputMean: perEmitter(),
    valveMean: perEmitter(),
    most: perEmitter(),
    drawn: new Float64Array(m.home.sources.length),
    low: perRoom(),
    high: perRoom(),
    held: new Uint8Array(m.rooms),
    storage: perRoom(),
    overWeight: perRoom(),
    target: perRoom(),
    matrix: perValue(),
    rhs: perRoom(),
    matrixWork: perValue(),
    rhsWork: perRoom(),
  };
}

/** Guess the rooms' temperatures in the middle of the coming step from the last two. [°C] */
export function guessTemperatures({ rooms }: Model, h: HeatState): void {
  const { temperature, before, guess } = h;
  for (let i = 0; i < rooms; i++) guess[i] = 1.5 * temperature[i]! - 0.5 * before[i]!;
}

/**
 * Step the heat of all rooms at once.
 *
 * @param day      what people set and do; this step's values begin at `at` (a multiple of rooms)
 * @param outdoor  outdoor temperature [°C]
 */
export function stepHeat(
  m: Model,
  h: HeatState,
  air: Air,
  day: Day,
  at: number,
  outdoor: number,
): void {
  assemble(m, h, air, day, at, outdoor);
  emitterLimits(m, h);
  setTargets(m, h, day.setpoints, at);
  holdAtSettings(m, h);
  if (exceedSources(m, h)) holdAtSettings(m, h);
  shareOut(m, h);
  const { temperature, before, mean, overWeight } = h;
  settleChains(m.chains, mean, h.emittedRadiant);
  for (let i = 0; i < m.rooms; i++) {
    before[i] = temperature[i]!;
    temperature[i] = temperature[i]! + (mean[i]! - temperature[i]!) * overWeight[i]!;
  }
}

function assemble(m: Model, h: HeatState, air: Air, day: Day, at: number, outdoor: number): void {
  const { rooms, dt, airCp, airCapacity, paneUA, chainG, elimination, doorAB, doorBA, paths } = m;
  const { diagonal } = elimination;
  const { matrix, rhs, storage, overWeight, radiant, sunOnSurfaces, sun, rhsWork } = h;
  const { peopleHeat, thingsHeat, drying } = day;
  matrix.set(m.fixed);
  // rhsWork collects, per room, what depends on flows: here the rate of exchange. [W/K]
  for (let i = 0; i < rooms; i++) {
    rhsWork[i] = paneUA[i]! + airCp * (air.leak[i]! + air.opening[i]! + air.fan[i]!);
  }
  for (let d = 0; d < paths.doorways; d++) {
    const a = paths.doorA[d]!;
    const b = paths.doorB[d]!;
    const toB = airCp * air.forth[d]!;
    const toA = airCp * air.back[d]!;
    const ab = doorAB[d]!;
    const ba = doorBA[d]!;
    // Two doorways may join the same rooms, so entries add.
    matrix[ab] = matrix[ab]! - toA;
    matrix[ba] = matrix[ba]! - toB;
    matrix[diagonal[a]!] = matrix[diagonal[a]!]! + toA;
    matrix[diagonal[b]!] = matrix[diagonal[b]!]! + toB;
  }
  for (let i = 0; i < rooms; i++) {
    const exchange = rhsWork[i]!;
    const k = diagonal[i]!;
    const rate = matrix[k]! - m.fixed[k]! + exchange + chainG[i]!;
    const weight = implicitWeight((rate * dt) / airCapacity[i]!);
    const store = airCapacity[i]! / (weight * dt);
    storage[i] = store;
    overWeight[i] = 1 / weight;
    matrix[k] = matrix[k]! + exchange + store;
    const people = peopleHeat[at + i]!;
    const things = thingsHeat[at + i]!;
    const surfaces = m.surfaced[i]!;
    const radiantGain = surfaces * (people * PEOPLE_RADIANT + things * THINGS_RADIANT);
    const sunny = (1 - m.sunToAir[i]!) * surfaces * sun[i]!;
    radiant[i] = radiantGain;
    sunOnSurfaces[i] = sunny;
    const convective =
      people +
      things -
      radiantGain +
      sun[i]! -
      sunny +
      h.devices[i]! +
      h.phase[i]! -
      m.evaporation * drying[at + i]!;
    rhs[i] = store * h.temperature[i]! + exchange * outdoor + convective;
  }
  sweepChains(m.chains, h.boundary, radiant, sunOnSurfaces, rhs);
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
function holdAtSettings(m: Model, h: HeatState): void {
  const { rooms } = m;
  const { target, held, mean, low, high, emitted } = h;
  for (let round = 0; ; round++) {
    solveHeld(m, h);
    let moved = false;
    for (let i = 0; i < rooms; i++) {
      if (target[i] === Number.NEGATIVE_INFINITY) continue;
      const now = held[i]!;
      const to =
        now === AT_SETTING
          ? limitOf(emitted[i]!, low[i]!, high[i]!)
          : sideOf(now, mean[i]!, target[i]!);
      if (to === now) continue;
      held[i] = to;
      moved = true;
      if (round > MANY) break;
    }
    if (!moved || round > MANY + 4 * rooms) return;
  }
}

/** The mean over the step that would end it exactly at each room's setting. */
function setTargets(m: Model, h: HeatState, settings: Float64Array, at: number): void {
  const { temperature, target, overWeight, held } = h;
  for (let i = 0; i < m.rooms; i++) {
    const setting = settings[at + i]!;
    if (m.emitters.present[i] === 0 || setting === Number.NEGATIVE_INFINITY) {
      target[i] = Number.NEGATIVE_INFINITY;
      held[i] = AT_LEAST;
    } else {
      target[i] = temperature[i]! + (setting - temperature[i]!) / overWeight[i]!;
    }
  }
}

function limitOf(heat: number, low: number, high: number): number {
  if (heat < low) return AT_LEAST;
  return heat > high ? AT_MOST : AT_SETTING;
}

function sideOf(now: number, mean: number, target: number): number {
  if (now === AT_LEAST) return mean < target - CLOSE ? AT_SETTING : AT_LEAST;
  return mean > target + CLOSE ? AT_SETTING : AT_MOST;
}

/** Solve for the mean temperatures with every emitter as `held` says; find the heat of those in between. */
function solveHeld(m: Model, h: HeatState): void {
  const { rooms, elimination, emitters } = m;
  const { matrix, rhs, matrixWork, rhsWork, held, target, low, high, mean, emitted } = h;
  const { reach } = emitters;
  matrixWork.set(matrix);
  let pinned = 0;
  for (let i = 0; i < rooms; i++) {
    const state = held[i]!;
    if (state === AT_SETTING) {
      pinRow(
        elimination.rowStart,
        elimination.rowPosition,
        matrixWork,
        i,
        elimination.diagonal[i]!,
      );
      rhsWork[i] = target[i]!;
      pinned++;
    } else {
      const heat = state === AT_MOST ? high[i]! : low[i]!;
      emitted[i] = heat;
      rhsWork[i] = rhs[i]! + reach[i]! * heat;
    }
  }
  solveSparse(elimination, matrixWork, rhsWork, mean);
  if (pinned === 0) return;
  const { rowStart, rowPosition, rowColumn } = elimination;
  for (let i = 0; i < rooms; i++) {
    if (held[i] !== AT_SETTING) continue;
    let needed = -rhs[i]!;
    for (let k = rowStart[i]!; k < rowStart[i + 1]!; k++) {
      needed += matrix[rowPosition[k]!]! * mean[rowColumn[k]!]!;
    }
    emitted[i] = needed / reach[i]!;
  }
}

function pinRow(
  rowStart: Int32Array,
  rowPosition: Int32Array,
  matrix: Float64Array,
  i: number,
  diagonal: number,
): void {
  for (let k = rowStart[i]!; k < rowStart[i + 1]!; k++) matrix[rowPosition[k]!] = 0;
  matrix[diagonal] = 1;
}

/**
 * Book the step's heat. Adds to row `row` (a multiple of rooms) of the books.
 *
 * @param outdoor  outdoor temperature [°C]
 */
export function bookHeat(
  m: Model,
  h: HeatState,
  air: Air,
  day: Day,
  at: number,
  outdoor: number,
  books: Books,
  row: number,
): void {
  const { rooms, dt, airCp, paths } = m;
  const { energy } = books;
  const { mean } = h;
  for (let i = 0; i < rooms; i++) {
    const k = row + i;
    const fall = (outdoor - mean[i]!) * dt;
    energy.heating[k] = energy.heating[k]! + h.emitted[i]! * dt;
    energy.people[k] = energy.people[k]! + day.peopleHeat[at + i]! * dt;
    energy.things[k] = energy.things[k]! + day.thingsHeat[at + i]! * dt;
    energy.sun[k] = energy.sun[k]! + h.sun[i]! * dt;
    energy.panes[k] = energy.panes[k]! + m.paneUA[i]! * fall;
    energy.leakage[k] = energy.leakage[k]! + airCp * air.leak[i]! * fall;
    energy.openings[k] = energy.openings[k]! + airCp * air.opening[i]! * fall;
    energy.fans[k] = energy.fans[k]! + airCp * air.fan[i]! * fall;
    energy.devices[k] = energy.devices[k]! + h.devices[i]! * dt;
    energy.phaseChange[k] =
      energy.phaseChange[k]! + (h.phase[i]! - m.evaporation * day.drying[at + i]!) * dt;
  }
  for (let d = 0; d < paths.doorways; d++) {
    const a = paths.doorA[d]!;
    const b = paths.doorB[d]!;
    const rise = airCp * (mean[a]! - mean[b]!) * dt;
    energy.doorways[row + b] = energy.doorways[row + b]! + air.forth[d]! * rise;
    energy.doorways[row + a] = energy.doorways[row + a]! - air.back[d]! * rise;
  }
  bookChains(m, h, books, row);
}

/** A room's ledger covers its chains up to their far ends; the far room of a partition gets what leaves it. */
function bookChains(m: Model, h: HeatState, { byElement }: Books, row: number): void {
  const { chains, dt } = m;
  const { count, start, room, farRoom, boundary, kind, farG, mean } = chains;
  for (let c = 0; c < count; c++) {
    const b = boundary[c]!;
    const j = farRoom[c]!;
    if (b < 0 && j < 0) continue;
    const last = mean[start[c + 1]! - 1]!;
    const column = byElement[kind[c]!]!;
    const k = row + room[c]!;
    if (j >= 0) {
      const over = farG[c]! * (last - h.mean[j]!) * dt;
      column[k] = column[k]! - over;
      column[row + j] = column[row + j]! + over;
    } else {
      column[k] = column[k]! + farG[c]! * (h.boundary[b]! - last) * dt;
    }
  }
}

/** Heat stored in each room's air and in the chains that hang on it, against 0 °C. [J] */
export function storedHeat(m: Model, h: HeatState): Float64Array {
  const stored = m.airCapacity.map((c, i) => c * h.temperature[i]!);
  const { chains } = m;
  for (let c = 0; c < chains.count; c++) {
    for (let k = chains.start[c]!; k < chains.start[c + 1]!; k++) {
      stored[chains.room[c]!]! += chains.capacity[k]! * chains.temperature[k]!;
    }
  }
  return stored;
}

const AT_LEAST = 0;
const AT_SETTING = 1;
const AT_MOST = 2;

/** A room this near its setting is at it; far below anything a sensor or a person can tell. [K] */
const CLOSE = 1e-9;
/** Rounds of the active set before rooms are moved one at a time. */
const MANY = 20;

/** Radiant share of sensible heat; the rest warms the air. Common practice, handbook tables. [-] */
const PEOPLE_RADIANT = 0.5;
const THINGS_RADIANT = 0.4;
