import { MOLAR_RATIO } from '../../physics/moist-air/constants.ts';
import { saturationAt } from '../../physics/moist-air/saturation-table.ts';
import type { i32 } from '../../units/portable.ts';
import type { Model } from '../layout/model.ts';
import { IMPOSED, ROOM } from '../layout/state-layout.ts';

/*
 * A room that is held has its target in place of the balance of its air: the row of the matrix is
 * that of the identity. What is missing in the balance afterwards is what holding it takes.
 *
 * Targets are readings at the end of a step. The mean that leads there follows from how a step
 * relates both; a target for the mean itself would let the ends swing about it.
 */

/** Aim at the held temperatures, and give the air its extra heat. */
export function imposeHeat({ rooms, roomCount, imposed: { records }, heat: { rhs } }: Model): void {
  for (let i = 0; i < roomCount; i++) {
    const at = i * IMPOSED_STRIDE;
    const r = i * ROOM_STRIDE;
    const extra = records[at + HEAT]!;
    if (!Number.isNaN(extra)) rhs[2 * i + 1] = rhs[2 * i + 1]! + extra;
    const now = rooms[r + TEMPERATURE]!;
    records[at + MEAN_T] = now + (records[at + TARGET_T]! - now) / rooms[r + HEAT_OVER_WEIGHT]!;
  }
}

/** Whether a room stays at an imposed temperature, whatever its thermostat says. */
export function isHeld({ imposed: { records } }: Model, i: i32): boolean {
  return !Number.isNaN(records[i * IMPOSED_STRIDE + MEAN_T]!);
}

/** Put held temperatures in place of the balances of their rooms' air. */
export function holdTemperatures(m: Model): void {
  const { start, airRow, elimination, work, rhsWork } = m.heat;
  const { roomCount } = m;
  const { records } = m.imposed;
  for (let i = 0; i < roomCount; i++) {
    if (!isHeld(m, i)) continue;
    for (let q = start[i]!; q < start[i + 1]!; q++) work[airRow[q]!] = 0;
    work[elimination.diagonal[2 * i + 1]!] = 1;
    rhsWork[2 * i + 1] = records[i * IMPOSED_STRIDE + MEAN_T]!;
  }
}

/**
 * Let coolers do what holding a room takes out of it, as far as they can, where they are set to cool it at
 * about its temperature.
 *
 * @param settings  setpoints of cooling, infinite where a room is not to be cooled
 */
export function coolHeldRooms(m: Model, settings: Float64Array): void {
  const { rooms, roomCount } = m;
  for (let i = 0; i < roomCount; i++) {
    if (!isHeld(m, i)) continue;
    const r = i * ROOM_STRIDE;
    rooms[r + COOL_SHARE] = 0; // all of it counts as taken from the air, of which the solution is made already
    const mean = m.imposed.records[i * IMPOSED_STRIDE + MEAN_T]!;
    if (mean < settings[i]! - MOST_ERROR) continue;
    const excess = -heatMissing(m, i);
    if (excess > 0) rooms[r + COOLING] = Math.min(excess, rooms[r + COOL_MOST]!);
  }
}

/** What the balance of a held room's air lacks besides what coolers do. [W] */
export function heatMissing({ rooms, heat }: Model, i: i32): number {
  const { start, airRow, column, matrix, rhs, solution } = heat;
  const r = i * ROOM_STRIDE;
  const emitted = rooms[r + EMITTED]!;
  let missing = emitted * rooms[r + RADIANT_SHARE]! - emitted - rhs[2 * i + 1]!;
  for (let q = start[i]!; q < start[i + 1]!; q++) {
    missing += matrix[airRow[q]!]! * solution[column[q]!]!;
  }
  return missing;
}

/**
 * Aim at the held humidities, and give the air its extra vapour. Air is never above saturation: a
 * target beyond is held at saturation.
 */
export function imposeWater(m: Model): void {
  const { rooms, roomCount, pressure, rhs, cubics } = m;
  const { records } = m.imposed;
  for (let i = 0; i < roomCount; i++) {
    const at = i * IMPOSED_STRIDE;
    const r = i * ROOM_STRIDE;
    const extra = records[at + VAPOUR]!;
    if (!Number.isNaN(extra)) rhs[i] = rhs[i]! + extra;
    let target = records[at + TARGET_W]!;
    const relative = records[at + TARGET_RH]!;
    if (!Number.isNaN(relative)) {
      const p = 0.01 * relative * saturationAt(cubics, rooms[r + TEMPERATURE]!);
      target = (MOLAR_RATIO * p) / (pressure - p);
    }
    const now = rooms[r + HUMIDITY]!;
    const mean = now + (target - now) / rooms[r + WATER_OVER_WEIGHT]!;
    records[at + MEAN_W] = Math.min(mean, rooms[r + MOST_W]!);
    if (!Number.isNaN(mean)) rooms[r + SATURATED] = 0;
  }
}

/** Put held humidities in place of the balances of their rooms' air, of which diagonal and right-hand side are kept. */
export function holdHumidities(m: Model): void {
  const { rooms, roomCount, elimination, matrixWork, rhsWork } = m;
  const { diagonal, rowStart, rowPosition } = elimination;
  for (let i = 0; i < roomCount; i++) {
    const mean = m.imposed.records[i * IMPOSED_STRIDE + MEAN_W]!;
    if (Number.isNaN(mean)) continue;
    const r = i * ROOM_STRIDE;
    rooms[r + OWN_LOSS] = matrixWork[diagonal[i]!]!;
    rooms[r + OWN_GAIN] = rhsWork[i]!;
    for (let k = rowStart[i]!; k < rowStart[i + 1]!; k++) matrixWork[rowPosition[k]!] = 0;
    matrixWork[diagonal[i]!] = 1;
    rhsWork[i] = mean;
  }
}

const { temperature: TARGET_T, humidity: TARGET_W, relativeHumidity: TARGET_RH } = IMPOSED;
const { meanTemperature: MEAN_T, meanHumidity: MEAN_W, heat: HEAT, vapour: VAPOUR } = IMPOSED;
const { temperature: TEMPERATURE, heatOverWeight: HEAT_OVER_WEIGHT } = ROOM;
const { humidity: HUMIDITY, mostHumidity: MOST_W } = ROOM;
const { waterOverWeight: WATER_OVER_WEIGHT, saturated: SATURATED } = ROOM;
const { ownLoss: OWN_LOSS, ownGain: OWN_GAIN } = ROOM;
const { emitted: EMITTED, radiantShare: RADIANT_SHARE } = ROOM;
const { cooling: COOLING, coolMost: COOL_MOST, coolShare: COOL_SHARE } = ROOM;

/** A thermostat may be set so far above what it keeps; fewer than 1 in 20 are farther off, common practice. [K] */
const MOST_ERROR = 2;

const IMPOSED_STRIDE = IMPOSED.stride;
const ROOM_STRIDE = ROOM.stride;
