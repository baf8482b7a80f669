import type { DayInputs } from '../control/day-inputs.ts';
import { emitterLimits, exceedSources, settleEmitters } from './emitters.ts';
import type { Model } from './model.ts';
import { overImplicitWeight } from './numerics/implicit-weight.ts';
import { settleChains, sweepChains } from './rc-chains.ts';
import { recordHeat } from './record-heat.ts';
import { ROOM } from './state-layout.ts';
import { setTargets, solveThermostats } from './thermostat-solve.ts';

/**
 * Solve for the mean temperatures of all rooms over the step together with the heat of their emitters.
 *
 * @param day      what people set and do; this step's values begin at `at` (step times rooms)
 * @param setpoints  what the thermostats hold, -Infinity for off [°C]
 * @param outdoor    outdoor temperature [°C]
 */
export function solveHeat(
  m: Model,
  day: DayInputs,
  at: number,
  setpoints: Float64Array,
  outdoor: number,
): void {
  assemble(m, day, at, outdoor);
  sweepChains(m.chains, m.rooms, m.boundary, m.rhs);
  emitterLimits(m);
  setTargets(m, setpoints);
  solveThermostats(m);
  if (exceedSources(m)) solveThermostats(m);
}

/**
 * Advance every heat store to the end of the step, and add the step's heat to the ledger.
 *
 * @param flows  BOOK records, this month's from record `row` on
 */
export function settleHeat(
  m: Model,
  day: DayInputs,
  at: number,
  outdoor: number,
  flows: Float64Array,
  row: number,
): void {
  settleEmitters(m);
  settleRooms(m);
  settleChains(m.chains, m.rooms, m.boundary, m.dt, flows, row);
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
export function correctGuesses({ rooms, roomCount, solution }: Model): boolean {
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

function assemble(m: Model, day: DayInputs, at: number, outdoor: number): void {
  const { rooms, roomCount, airCp, fixed, flow, matrix, rhs, evaporation } = m;
  const { diagonal } = m.elimination;
  const { peopleHeat, applianceHeat, drying } = day;
  for (let k = 0; k < matrix.length; k++) matrix[k] = fixed[k]! + airCp * flow[k]!;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = diagonal[i]!;
    const pane = rooms[r + PANE_UA]!;
    const perStep = rooms[r + CAPACITY_RATE]!;
    const rate = airCp * flow[k]! + pane + rooms[r + CHAIN_G]!;
    const overWeight = overImplicitWeight(rate / perStep);
    const store = perStep * overWeight;
    rooms[r + OVER_WEIGHT] = overWeight;
    matrix[k] = matrix[k]! + pane + store;
    const people = peopleHeat[at + i]!;
    const appliances = applianceHeat[at + i]!;
    const surfaced = rooms[r + SURFACED]!;
    const sun = rooms[r + SUN]!;
    const radiated = rooms[r + DEVICE_RADIANT]!;
    const radiant =
      surfaced * (people * PEOPLE_RADIANT + appliances * APPLIANCES_RADIANT + radiated);
    const sunny = surfaced * (1 - rooms[r + SUN_TO_AIR]!) * sun;
    rooms[r + RADIANT_GAIN] = radiant;
    rooms[r + SUN_ON_SURFACES] = sunny;
    rooms[r + WARM_SURFACE] = 0;
    const devices = rooms[r + DEVICE_HEAT]! + radiated;
    const given = people + appliances + devices - radiant + sun - sunny;
    const taken = evaporation * drying[at + i]! - rooms[r + PHASE]!;
    const exchange = airCp * rooms[r + EXCHANGE]! + pane;
    const supplied = airCp * rooms[r + FAN]! * rooms[r + FAN_T]!;
    rhs[i] = store * rooms[r + TEMPERATURE]! + exchange * outdoor + supplied + given - taken;
  }
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

const { temperature: TEMPERATURE, meanTemperature: MEAN } = ROOM;
const { guess: GUESS, heatOverWeight: OVER_WEIGHT } = ROOM;
const { phase: PHASE, sun: SUN, deviceHeat: DEVICE_HEAT, deviceRadiant: DEVICE_RADIANT } = ROOM;
const {
  radiantGain: RADIANT_GAIN,
  sunOnSurfaces: SUN_ON_SURFACES,
  warmSurface: WARM_SURFACE,
} = ROOM;
const { capacityRate: CAPACITY_RATE, paneUA: PANE_UA, chainG: CHAIN_G, surfaced: SURFACED } = ROOM;
const { sunToAir: SUN_TO_AIR } = ROOM;
const { fan: FAN, fanTemperature: FAN_T, exchange: EXCHANGE } = ROOM;

/** A guess this far off is wrong by what a step of an open window or door does, not by a curve. [K] */
const FAR = 0.5;

/** Radiant share of sensible heat; the rest warms the air. Common practice, handbook tables. [-] */
const PEOPLE_RADIANT = 0.5;
const APPLIANCES_RADIANT = 0.4;

const ROOM_STRIDE = ROOM.stride;
