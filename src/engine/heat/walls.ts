import type { f64, i32 } from '../../units/portable.ts';
import type { Walls } from '../layout/walls.ts';
import { BOOK } from '../ledger/ledger-accumulator.ts';

/**
 * Add to the rooms' right-hand sides what walls give by themselves: what they hold, what comes through
 * them and what sun falls on them, with air and radiant nodes at 0 °C.
 *
 * @param boundary       temperature at each boundary, mean over the step [°C]
 * @param sunOnSurfaces  by room [W]
 * @param rhs            radiant node and air, room by room [W]
 */
export function gatherWalls(
  walls: Walls,
  boundary: Float64Array,
  sunOnSurfaces: Float64Array,
  rhs: Float64Array,
): void {
  const { count, near, far, boundary: ends, firstMode, nearAir, nearRadiant } = walls;
  const { nearSun, nearToNear, farToNear, mode, atNear } = walls;
  let k = 0;
  for (let c = 0; c < count; c++) {
    const i = near[c]!;
    const end = firstMode[c + 1]!;
    const sun = nearSun[c]! * sunOnSurfaces[i]!;
    let surface = nearToNear[c]! * sun;
    for (; k < end; k++) surface += atNear[k]! * mode[k]!;
    const b = ends[c]!;
    if (b >= 0) surface += farToNear[c]! * boundary[b]!;
    else if (far[c]! >= 0) {
      surface += gatherFarFace(walls, c, sun, sunOnSurfaces, rhs);
    }
    rhs[2 * i] = rhs[2 * i]! + nearRadiant[c]! * surface;
    rhs[2 * i + 1] = rhs[2 * i + 1]! + nearAir[c]! * surface;
  }
}

/** Add what the far face of a partition gives its room. @returns what sun on it adds to the near face [K] */
function gatherFarFace(
  walls: Walls,
  c: i32,
  nearSun: number,
  sunOnSurfaces: Float64Array,
  rhs: Float64Array,
): number {
  const { far, firstMode, farAir, farRadiant, farSun, mode, atFar } = walls;
  const { nearToFar, farToNear, farToFar } = walls;
  const j = far[c]!;
  const end = firstMode[c + 1]!;
  const sun = farSun[c]! * sunOnSurfaces[j]!;
  let surface = farToFar[c]! * sun + nearToFar[c]! * nearSun;
  for (let k = firstMode[c]!; k < end; k++) surface += atFar[k]! * mode[k]!;
  rhs[2 * j] = rhs[2 * j]! + farRadiant[c]! * surface;
  rhs[2 * j + 1] = rhs[2 * j + 1]! + farAir[c]! * surface;
  return farToNear[c]! * sun;
}

/**
 * Advance all walls to the end of the step, now that the rooms' means are known, and add the heat
 * through their far ends to the ledger.
 *
 * A room's ledger covers its walls up to their far ends; the far room of a partition gets what
 * leaves it.
 *
 * @param mean   radiant node and air, room by room, mean over the step [°C]
 * @param flows  BOOK records, this month's from record `row` on
 */
export function settleWalls(
  walls: Walls,
  boundary: Float64Array,
  sunOnSurfaces: Float64Array,
  mean: Float64Array,
  dt: number,
  flows: Float64Array,
  row: i32,
): void {
  const { count, near, far, boundary: ends, firstMode, nearAir, nearRadiant } = walls;
  const { farAir, farRadiant, farG, nearSun, farSun, nearToFar, farToFar } = walls;
  const { mode, decay, intoNear, intoFar, atFar, book, farBook } = walls;
  const from = row * BOOK_STRIDE;
  let k = 0;
  for (let c = 0; c < count; c++) {
    const i = near[c]!;
    const end = firstMode[c + 1]!;
    const air = nearAir[c]!;
    const radiant = nearRadiant[c]!;
    const seen =
      (radiant * mean[2 * i]! + air * mean[2 * i + 1]!) / (radiant + air) +
      nearSun[c]! * sunOnSurfaces[i]!;
    const b = ends[c]!;
    const j = far[c]!;
    if (b < 0 && j < 0) {
      for (; k < end; k++) mode[k] = decay[k]! * mode[k]! + intoNear[k]! * seen;
      continue;
    }
    let beyond: f64 = 0;
    if (b >= 0) beyond = boundary[b]!;
    else {
      const toAir = farAir[c]!;
      const toRadiant = farRadiant[c]!;
      beyond =
        (toRadiant * mean[2 * j]! + toAir * mean[2 * j + 1]!) / (toRadiant + toAir) +
        farSun[c]! * sunOnSurfaces[j]!;
    }
    let last = nearToFar[c]! * seen + farToFar[c]! * beyond;
    for (; k < end; k++) {
      const z = mode[k]!;
      last += atFar[k]! * z;
      mode[k] = decay[k]! * z + intoNear[k]! * seen + intoFar[k]! * beyond;
    }
    const inwards = farG[c]! * dt * (beyond - last);
    const here = from + book[c]!;
    flows[here] = flows[here]! + inwards;
    if (j < 0) continue;
    const there = from + farBook[c]!;
    flows[there] = flows[there]! - inwards;
  }
}

const BOOK_STRIDE = BOOK.stride;
