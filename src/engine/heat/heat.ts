import type { DayInputs } from '../../control/day-inputs.ts';
import type { Commands } from '../../control/observations.ts';
import type { f64, i32 } from '../../units/portable.ts';
import { coolHeldRooms, imposeHeat } from '../imposed/hold-rooms.ts';
import { EXTRA, TEMPERATURE as HELD } from '../layout/lay-out-imposed.ts';
import type { Model } from '../layout/model.ts';
import { DOOR, ROOM } from '../layout/state-layout.ts';
import { overImplicitWeight } from '../numerics/implicit-weight.ts';
import { recordHeat } from '../record/record-heat.ts';
import { coolerLimits, settleCoolers } from './cooling.ts';
import { emitterLimits, exceedSources, settleEmitters } from './emitters.ts';
import { noteFelt, setTargets, solveThermostats } from './thermostat-solve.ts';
import { gatherWalls, settleWalls } from './walls.ts';

/**
 * Solve for the mean temperatures of all rooms over the step together with the heat of their emitters.
 *
 * @param day      what people set and do; this step's values begin at `at` (step times rooms)
 * @param commands   setpoints of heating and cooling
 * @param outdoor    outdoor temperature [°C]
 */
export function solveHeat(
  m: Model,
  day: DayInputs,
  at: i32,
  commands: Commands,
  outdoor: number,
): void {
  assemble(m, day, at, outdoor);
  const { flags } = m.imposed;
  if (flags[HELD] === 1 || flags[EXTRA] === 1) imposeHeat(m);
  gatherWalls(m.walls, m.boundary, m.heat.sunOnSurfaces, m.heat.rhs);
  emitterLimits(m);
  coolerLimits(m);
  setTargets(m, commands.setpoints, commands.coolingSetpoints);
  solveThermostats(m);
  if (exceedSources(m)) solveThermostats(m);
  if (flags[HELD] === 1) coolHeldRooms(m, commands.coolingSetpoints);
}

/**
 * Advance every heat store to the end of the step, and add the step's heat to the ledger.
 *
 * @param flows  BOOK records, this month's from record `row` on
 */
export function settleHeat(
  m: Model,
  day: DayInputs,
  at: i32,
  outdoor: number,
  flows: Float64Array,
  row: i32,
): void {
  settleEmitters(m);
  settleCoolers(m);
  settleRooms(m);
  const { sunOnSurfaces, solution } = m.heat;
  settleWalls(m.walls, m.boundary, sunOnSurfaces, solution, m.dt, flows, row);
  recordHeat(m, day, at, outdoor, flows, row);
}

/**
 * Extrapolate each room's temperature to the middle of the coming step: the end of the last step plus
 * its distance from the mean of that step. Linear for a steady rise; near zero after a transient that
 * decayed within the step. [°C]
 */
export function guessTemperatures({ rooms, roomCount }: Model): void {
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    rooms[r + GUESS] = 2 * rooms[r + TEMPERATURE]! - rooms[r + MEAN]!;
  }
}

/**
 * Whether some room's solution is far from the temperature that its air flows were computed with, as
 * happens when a window or a door opens. If so the estimates are corrected, for one more iteration.
 */
export function correctGuesses({ rooms, roomCount, heat: { solution } }: Model): boolean {
  let far = false;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const off = solution[2 * i + 1]! - rooms[r + GUESS]!;
    if (off > FAR || off < -FAR) far = true;
  }
  if (!far) return false;
  for (let i = 0; i < roomCount; i++) rooms[i * ROOM_STRIDE + GUESS] = solution[2 * i + 1]!;
  return true;
}

/** Matrix and right-hand sides without walls and emitters. */
function assemble(m: Model, day: DayInputs, at: i32, outdoor: number): void {
  const { rooms, roomCount, airCp, flow, evaporation } = m;
  const { fixed, matrix, rhs, sunOnSurfaces } = m.heat;
  const { size } = m.heat.elimination;
  const { diagonal } = m.elimination;
  const { diagonal: heatDiagonal } = m.heat.elimination;
  const { peopleHeat, applianceHeat, drying } = day;
  for (let k = 0; k < size; k++) matrix[k] = fixed[k]!;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const carried = airCp * flow[diagonal[i]!]!;
    const perStep = rooms[r + CAPACITY_RATE]!;
    const k = heatDiagonal[2 * i + 1]!;
    const overWeight = overImplicitWeight((carried + fixed[k]!) / perStep);
    const store = perStep * overWeight;
    rooms[r + OVER_WEIGHT] = overWeight;
    matrix[k] = matrix[k]! + carried + store;
    const people = peopleHeat[at + i]!;
    const appliances = applianceHeat[at + i]!;
    const sun = rooms[r + SUN]!;
    const radiated = rooms[r + DEVICE_RADIANT]!;
    const devices = rooms[r + DEVICE_HEAT]! + radiated;
    let radiant: f64 = 0;
    if (rooms[r + RADIANT_G]! > 0) {
      radiant = people * PEOPLE_RADIANT + appliances * APPLIANCES_RADIANT + radiated;
    }
    const sunny = rooms[r + SURFACED]! * (1 - rooms[r + SUN_TO_AIR]!) * sun;
    rooms[r + RADIANT_GAIN] = radiant;
    sunOnSurfaces[i] = sunny;
    const given = people + appliances + devices - radiant + sun - sunny;
    const taken = evaporation * drying[at + i]! - rooms[r + PHASE]! + rooms[r + PANE_AIR_SKY]!;
    const exchange = airCp * rooms[r + EXCHANGE]! + rooms[r + PANE_AIR]!;
    const supplied = airCp * rooms[r + FAN]! * rooms[r + FAN_T]!;
    rhs[2 * i] = rooms[r + PANE_RADIANT]! * outdoor - rooms[r + PANE_RADIANT_SKY]! + radiant;
    rhs[2 * i + 1] =
      store * rooms[r + TEMPERATURE]! + exchange * outdoor + supplied + given - taken;
  }
  addDoorways(m);
}

/** What air carries from room to room. */
function addDoorways({ doors, doorCount, airCp, heat }: Model): void {
  const { matrix, doors: positions } = heat;
  for (let d = 0; d < doorCount; d++) {
    const toA = positions[2 * d]!;
    const toB = positions[2 * d + 1]!;
    matrix[toA] = matrix[toA]! - airCp * doors[d * DOOR_STRIDE + BACK]!;
    matrix[toB] = matrix[toB]! - airCp * doors[d * DOOR_STRIDE + FORTH]!;
  }
}

function settleRooms({ rooms, roomCount, heat: { solution } }: Model): void {
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const now = rooms[r + TEMPERATURE]!;
    const mean = solution[2 * i + 1]!;
    const g = rooms[r + RADIANT_G]!;
    const radiated =
      rooms[r + RADIANT_GAIN]! +
      rooms[r + EMITTED]! * rooms[r + RADIANT_SHARE]! -
      rooms[r + COOLING]! * rooms[r + COOL_SHARE]!;
    rooms[r + MEAN] = mean;
    rooms[r + TEMPERATURE] = now + (mean - now) * rooms[r + OVER_WEIGHT]!;
    const surfaces = g > 0 ? solution[2 * i]! - radiated / g : mean;
    noteFelt(rooms, r, surfaces);
    rooms[r + RADIANT_MEAN] = surfaces;
  }
}

const { temperature: TEMPERATURE, meanTemperature: MEAN } = ROOM;
const { guess: GUESS, heatOverWeight: OVER_WEIGHT, emitted: EMITTED } = ROOM;
const { phase: PHASE, sun: SUN, deviceHeat: DEVICE_HEAT, deviceRadiant: DEVICE_RADIANT } = ROOM;
const { radiantGain: RADIANT_GAIN, radiantShare: RADIANT_SHARE, radiantMean: RADIANT_MEAN } = ROOM;
const { capacityRate: CAPACITY_RATE, paneAir: PANE_AIR, paneRadiant: PANE_RADIANT } = ROOM;
const { radiantG: RADIANT_G, surfaced: SURFACED, sunToAir: SUN_TO_AIR } = ROOM;
const { paneAirSky: PANE_AIR_SKY, paneRadiantSky: PANE_RADIANT_SKY } = ROOM;
const { cooling: COOLING, coolShare: COOL_SHARE } = ROOM;
const { fan: FAN, fanTemperature: FAN_T, exchange: EXCHANGE } = ROOM;
const { forth: FORTH, back: BACK } = DOOR;

/** A guess this far off is wrong by what a step of an open window or door does, not by a curve. [K] */
const FAR = 0.5;

/** Radiant share of sensible heat; the rest warms the air. Common practice, handbook tables. [-] */
const PEOPLE_RADIANT = 0.5;
const APPLIANCES_RADIANT = 0.4;

const ROOM_STRIDE = ROOM.stride;
const DOOR_STRIDE = DOOR.stride;
