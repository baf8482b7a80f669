import type { Day } from '../control/day.ts';
import type { Air } from './air.ts';
import type { Books } from './books.ts';
import type { Model } from './model.ts';
import { implicitWeight } from './numerics/implicit-weight.ts';
import { solveSparse } from './numerics/sparse.ts';

/** Everything about water that changes from step to step, and the scratch to change it with. */
export interface WaterState {
  /** Per room: humidity ratio at the start, at the start of the step before, mean. [kg/kg] */
  readonly humidity: Float64Array;
  readonly before: Float64Array;
  readonly mean: Float64Array;
  /** Per room: relative humidity of what buffers, at the start, 0 to 1 [-]. */
  readonly buffer: Float64Array;
  /** Per pane: water on it. [kg] */
  readonly film: Float64Array;
  /** Per pane: 1 where it exchanges freely with the air this step, 0 where it can only dry out. */
  readonly wet: Uint8Array;
  /** Per room: vapour pressure for one unit of humidity ratio [Pa]; saturation pressure [Pa]. */
  readonly pressure: Float64Array;
  readonly saturation: Float64Array;
  /** Per pane: saturation pressure at its inner surface. [Pa] */
  readonly paneSaturation: Float64Array;
  /** Per pane: net condensation. [kg/s] */
  readonly condensing: Float64Array;
  /** Per room: net condensation on all panes. [kg/s] */
  readonly roomCondensing: Float64Array;
  /** Per room: water added by devices, negative for a dehumidifier. [kg/s] */
  readonly devices: Float64Array;
  /** Scratch. */
  readonly storage: Float64Array;
  readonly overWeight: Float64Array;
  readonly uptake: Float64Array;
  readonly matrix: Float64Array;
  readonly rhs: Float64Array;
  readonly matrixWork: Float64Array;
  readonly rhsWork: Float64Array;
}

export function createWater(m: Model): WaterState {
  const perRoom = (): Float64Array => new Float64Array(m.rooms);
  const perPane = (): Float64Array => new Float64Array(m.panes.count);
  const perValue = (): Float64Array => new Float64Array(m.elimination.size);
  return {
    humidity: perRoom(),
    before: perRoom(),
    mean: perRoom(),
    buffer: perRoom(),
    film: perPane(),
    wet: new Uint8Array(m.panes.count),
    pressure: perRoom(),
    saturation: perRoom(),
    paneSaturation: perPane(),
    condensing: perPane(),
    roomCondensing: perRoom(),
    devices: perRoom(),
    storage: perRoom(),
    overWeight: perRoom(),
    uptake: perRoom(),
    matrix: perValue(),
    rhs: perRoom(),
    matrixWork: perValue(),
    rhsWork: perRoom(),
  };
}

/**
 * Step the water of all rooms at once: air, what buffers, films on panes.
 *
 * The buffer is one store per room, driven by the difference of vapour pressure; it drops out of
 * the room's equation in closed form. A pane exchanges with the air while it is wet or the air over
 * it is too moist; a film that would be used up within the step dries at the rate that just does so.
 *
 * @param temperature  of each room, mean over the step [°C]
 * @param saturation   saturation pressure by temperature, [°C] -> [Pa]
 */
export function stepWater(
  m: Model,
  w: WaterState,
  air: Air,
  day: Day,
  at: number,
  outdoor: number,
  outdoorHumidity: number,
  temperature: Float64Array,
  saturation: (temperature: number) => number,
): void {
  const { rooms, dt, panes } = m;
  const { humidity, before, mean, overWeight, saturation: full, paneSaturation } = w;
  for (let i = 0; i < rooms; i++) {
    full[i] = saturation(temperature[i]!);
    const guess = Math.max(0, 1.5 * humidity[i]! - 0.5 * before[i]!);
    w.pressure[i] = m.pressure / (MOLAR_MASS_RATIO + guess);
  }
  for (let p = 0; p < panes.count; p++) {
    const t = temperature[panes.room[p]!]!;
    paneSaturation[p] = saturation(t - panes.drop[p]! * (t - outdoor));
  }
  assemble(m, w, air, day, at, outdoorHumidity);
  solveWithFilms(m, w);
  for (let p = 0; p < panes.count; p++) {
    w.film[p] = w.wet[p] === 1 ? w.film[p]! + w.condensing[p]! * dt : 0;
  }
  for (let i = 0; i < rooms; i++) {
    before[i] = humidity[i]!;
    humidity[i] = humidity[i]! + (mean[i]! - humidity[i]!) * overWeight[i]!;
  }
}

function assemble(
  m: Model,
  w: WaterState,
  air: Air,
  day: Day,
  at: number,
  outdoorHumidity: number,
): void {
  const { rooms, dt, airMass, elimination, doorAB, doorBA, paths, bufferCapacity, bufferG } = m;
  const { diagonal } = elimination;
  const { matrix, rhs, pressure, saturation, uptake, storage, overWeight } = w;
  matrix.fill(0);
  for (let d = 0; d < paths.doorways; d++) {
    const a = diagonal[paths.doorA[d]!]!;
    const b = diagonal[paths.doorB[d]!]!;
    const ab = doorAB[d]!;
    const ba = doorBA[d]!;
    matrix[ab] = matrix[ab]! - air.back[d]!;
    matrix[ba] = matrix[ba]! - air.forth[d]!;
    matrix[a] = matrix[a]! + air.back[d]!;
    matrix[b] = matrix[b]! + air.forth[d]!;
  }
  for (let i = 0; i < rooms; i++) {
    const k = diagonal[i]!;
    const exchange = air.leak[i]! + air.opening[i]! + air.fan[i]!;
    // Buffer: capacity/(weight dt) (m - x0) = g (p - saturation m), m eliminated.
    const g = bufferG[i]!;
    let q = 0;
    if (g > 0) {
      const weight = implicitWeight((g * saturation[i]! * dt) / bufferCapacity[i]!);
      const store = bufferCapacity[i]! / (weight * dt);
      q = (g * store) / (store + g * saturation[i]!);
    }
    uptake[i] = q;
    const buffered = q * pressure[i]!;
    const rate = matrix[k]! + exchange + g * pressure[i]!;
    const airWeight = implicitWeight((rate * dt) / airMass[i]!);
    const store = airMass[i]! / (airWeight * dt);
    storage[i] = store;
    overWeight[i] = 1 / airWeight;
    matrix[k] = matrix[k]! + exchange + store + buffered;
    rhs[i] =
      store * w.humidity[i]! +
      exchange * outdoorHumidity +
      q * saturation[i]! * w.buffer[i]! +
      day.peopleVapour[at + i]! +
      day.thingsVapour[at + i]! +
      day.drying[at + i]! +
      w.devices[i]!;
  }
}

/** Solve, check every pane against what was assumed of it, and solve again until all agree. */
function solveWithFilms(m: Model, w: WaterState): void {
  const { dt, rooms, panes, elimination } = m;
  const { matrix, rhs, matrixWork, rhsWork, wet, film, pressure, paneSaturation, mean } = w;
  const { condensing, roomCondensing } = w;
  for (let round = 0; ; round++) {
    matrixWork.set(matrix);
    for (let i = 0; i < rooms; i++) rhsWork[i] = rhs[i]!;
    for (let p = 0; p < panes.count; p++) {
      const i = panes.room[p]!;
      const g = panes.vapourG[p]!;
      if (wet[p] === 1) {
        const k = elimination.diagonal[i]!;
        matrixWork[k] = matrixWork[k]! + g * pressure[i]!;
        rhsWork[i] = rhsWork[i]! + g * paneSaturation[p]!;
      } else if (film[p]! > 0) {
        rhsWork[i] = rhsWork[i]! + film[p]! / dt;
      }
    }
    solveSparse(elimination, matrixWork, rhsWork, mean);
    let moved = false;
    for (let p = 0; p < panes.count; p++) {
      const i = panes.room[p]!;
      const free = panes.vapourG[p]! * (pressure[i]! * mean[i]! - paneSaturation[p]!);
      const dries = film[p]! + free * dt <= 0;
      if (wet[p] === 1 ? dries : !dries) {
        wet[p] = dries ? 0 : 1;
        moved = true;
        if (round > MANY) break;
      }
      condensing[p] = wet[p] === 1 ? free : -film[p]! / dt;
    }
    if (!moved || round > MANY + 4 * panes.count) break;
  }
  roomCondensing.fill(0);
  for (let p = 0; p < panes.count; p++) {
    const i = panes.room[p]!;
    roomCondensing[i] = roomCondensing[i]! + condensing[p]!;
  }
}

/**
 * Settle the buffers, book the step's water, and hand the heat of condensing and sorption on.
 *
 * @param phase  receives, per room, the heat freed in the room itself [W]
 */
export function settleWater(
  m: Model,
  w: WaterState,
  air: Air,
  day: Day,
  at: number,
  outdoorHumidity: number,
  phase: Float64Array,
  books: Books,
  row: number,
): void {
  const { rooms, dt, paths, panes } = m;
  const { mean, uptake, pressure, saturation, buffer } = w;
  const { water } = books;
  for (let i = 0; i < rooms; i++) {
    const g = m.bufferG[i]!;
    let taken = 0;
    if (g > 0) {
      const p = pressure[i]! * mean[i]!;
      taken = uptake[i]! * (p - saturation[i]! * buffer[i]!);
      buffer[i] = buffer[i]! + (taken * dt) / m.bufferCapacity[i]!;
    }
    phase[i] = m.evaporation * taken;
    const k = row + i;
    const fall = (outdoorHumidity - mean[i]!) * dt;
    water.people[k] = water.people[k]! + day.peopleVapour[at + i]! * dt;
    water.things[k] = water.things[k]! + day.thingsVapour[at + i]! * dt;
    water.drying[k] = water.drying[k]! + day.drying[at + i]! * dt;
    water.leakage[k] = water.leakage[k]! + air.leak[i]! * fall;
    water.openings[k] = water.openings[k]! + air.opening[i]! * fall;
    water.fans[k] = water.fans[k]! + air.fan[i]! * fall;
    water.devices[k] = water.devices[k]! + w.devices[i]! * dt;
  }
  for (let d = 0; d < paths.doorways; d++) {
    const a = paths.doorA[d]!;
    const b = paths.doorB[d]!;
    const rise = (mean[a]! - mean[b]!) * dt;
    water.doorways[row + b] = water.doorways[row + b]! + air.forth[d]! * rise;
    water.doorways[row + a] = water.doorways[row + a]! - air.back[d]! * rise;
  }
  for (let p = 0; p < panes.count; p++) {
    const i = panes.room[p]!;
    const freed = w.condensing[p]!;
    if (freed !== 0) {
      // The part of the heat that the glass passes outdoors is lost to the room.
      phase[i] = phase[i]! + m.evaporation * freed * (1 - panes.drop[p]!);
      const most = FILM_HOLDS * panes.area[p]!;
      if (w.film[p]! > most) {
        water.runoff[row + i] = water.runoff[row + i]! - (w.film[p]! - most);
        w.film[p] = most;
      }
    }
  }
}

/** Water in each room's air, buffer and films. [kg] */
export function storedWater(m: Model, w: WaterState): Float64Array {
  const stored = m.airMass.map(
    (mass, i) => mass * w.humidity[i]! + m.bufferCapacity[i]! * w.buffer[i]!,
  );
  for (let p = 0; p < m.panes.count; p++) stored[m.panes.room[p]!]! += w.film[p]!;
  return stored;
}

/** Molar mass of water over that of dry air. [-] */
const MOLAR_MASS_RATIO = 0.621945;
/** What a square metre of pane holds before drops run off; beyond it water leaves the balance. [kg/m2] */
const FILM_HOLDS = 0.2;
const MANY = 20;
