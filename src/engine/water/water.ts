import type { DayInputs } from '../../control/day-inputs.ts';
import { MOLAR_RATIO } from '../../physics/moist-air/constants.ts';
import { saturationAt } from '../../physics/moist-air/saturation-table.ts';
import type { i32 } from '../../units/portable.ts';
import { imposeWater } from '../imposed/hold-rooms.ts';
import { EXTRA, HUMIDITY as HELD } from '../layout/lay-out-imposed.ts';
import type { Model } from '../layout/model.ts';
import { ROOM } from '../layout/state-layout.ts';
import { CARRIED_TERMS, ENERGY_TERMS, WATER_TERMS, type WaterTerm } from '../ledger/ledger.ts';
import { BOOK } from '../ledger/ledger-accumulator.ts';
import { overImplicitWeight } from '../numerics/implicit-weight.ts';
import { bookAir } from '../record/book-air.ts';
import { giveLatentHeat, setFilms, settleFilms, solveWithFilms } from './films.ts';
import { eliminateStores, settleStores } from './moisture-stores.ts';

/**
 * Step the water of all rooms together (air, moisture buffers, films on surfaces) and add it to the ledger.
 *
 * Buffers drop out of the room's equation in closed form (see moisture-stores.ts); what condenses and
 * dries on surfaces is in films.ts. Air is never above saturation, neither on the mean of a step nor at
 * its end.
 *
 * @param outdoor          outdoor temperature [°C]
 * @param outdoorHumidity  outdoor humidity ratio [kg/kg]
 * @param flows            BOOK records, this month's from record `row` on
 */
export function stepWater(
  m: Model,
  day: DayInputs,
  at: i32,
  outdoor: number,
  outdoorHumidity: number,
  flows: Float64Array,
  row: i32,
): void {
  const { rooms, roomCount, pressure, cubics } = m;
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    const saturated = saturationAt(cubics, rooms[r + MEAN_T]!);
    rooms[r + SATURATION] = saturated;
    rooms[r + MOST_W] = mostHumidity(saturated, pressure);
    const guess = 2 * rooms[r + HUMIDITY]! - rooms[r + MEAN]!;
    rooms[r + PRESSURE] = pressure / (MOLAR_RATIO + Math.max(guess, 0));
    rooms[r + WET_G] = 0;
  }
  setFilms(m, outdoor);
  eliminateStores(m);
  assemble(m, day, at, outdoorHumidity);
  const { flags } = m.imposed;
  if (flags[HELD] === 1 || flags[EXTRA] === 1) imposeWater(m);
  solveWithFilms(m);
  settle(m);
  settleStores(m);
  bookWater(m, day, at, outdoorHumidity, flows, row);
  settleFilms(m, flows, row);
  giveLatentHeat(m);
}

function assemble(m: Model, day: DayInputs, at: i32, outdoorHumidity: number): void {
  const { rooms, roomCount, matrix, flow, rhs } = m;
  const { diagonal, size } = m.elimination;
  const { peopleVapour, applianceVapour, drying } = day;
  for (let k = 0; k < size; k++) matrix[k] = flow[k]!;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = diagonal[i]!;
    const perHumidity = rooms[r + PRESSURE]!;
    const perStep = rooms[r + MASS_RATE]!;
    const dried = flow[k]! + rooms[r + COIL_AIR]!;
    const rate = dried + (rooms[r + BUFFER_G]! + rooms[r + WET_G]!) * perHumidity;
    const overWeight = overImplicitWeight(rate / perStep);
    const store = perStep * overWeight;
    rooms[r + OVER_WEIGHT] = overWeight;
    matrix[k] = dried + store + rooms[r + UPTAKE]! * perHumidity;
    rhs[i] =
      store * rooms[r + HUMIDITY]! +
      rooms[r + EXCHANGE]! * outdoorHumidity +
      rooms[r + FAN]! * rooms[r + FAN_W]! +
      rooms[r + RELEASE]! +
      rooms[r + COIL_WATER]! +
      peopleVapour[at + i]! +
      applianceVapour[at + i]! +
      drying[at + i]! +
      rooms[r + DEVICE_WATER]!;
  }
}

function settle(m: Model): void {
  const { rooms, roomCount, dt, pressure, solution, cubics } = m;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const now = rooms[r + HUMIDITY]!;
    const mean = solution[i]!;
    rooms[r + MEAN] = mean;
    const end = now + (mean - now) * rooms[r + OVER_WEIGHT]!;
    rooms[r + HUMIDITY] = end;
    const cooler = Math.max(0, rooms[r + MEAN_T]! - rooms[r + TEMPERATURE]!);
    if (end > rooms[r + MOST_W]! * (1 - STEEPEST * cooler)) {
      const most = mostHumidity(saturationAt(cubics, rooms[r + TEMPERATURE]!), pressure);
      if (end > most) {
        rooms[r + HUMIDITY] = most;
        const excess = (rooms[r + AIR_MASS]! * (end - most)) / dt;
        rooms[r + FALLING] = rooms[r + FALLING]! + excess;
      }
    }
    rooms[r + ON_PANES] = 0;
    rooms[r + ON_WALLS] = 0;
  }
}

/** Humidity ratio of saturated air, without bound where water would boil. [kg/kg] */
function mostHumidity(saturation: number, pressure: number): number {
  return saturation < pressure
    ? (MOLAR_RATIO * saturation) / (pressure - saturation)
    : Number.POSITIVE_INFINITY;
}

function bookWater(
  m: Model,
  day: DayInputs,
  at: i32,
  outdoorHumidity: number,
  flows: Float64Array,
  row: i32,
): void {
  const { rooms, roomCount, dt } = m;
  const { peopleVapour, applianceVapour, drying } = day;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = (row + i) * BOOK_STRIDE;
    flows[k + PEOPLE] = flows[k + PEOPLE]! + peopleVapour[at + i]! * dt;
    flows[k + APPLIANCES] = flows[k + APPLIANCES]! + applianceVapour[at + i]! * dt;
    flows[k + DRYING] = flows[k + DRYING]! + drying[at + i]! * dt;
    flows[k + DEVICES] = flows[k + DEVICES]! + rooms[r + DEVICE_WATER]! * dt;
    const drained = rooms[r + COIL_AIR]! * rooms[r + MEAN]! - rooms[r + COIL_WATER]!;
    flows[k + COOLING] = flows[k + COOLING]! - drained * dt;
  }
  bookAir(m, MEAN, FAN_W, outdoorHumidity, 1, CARRIED, flows, row);
}

const { temperature: TEMPERATURE, meanTemperature: MEAN_T, humidity: HUMIDITY } = ROOM;
const { airMass: AIR_MASS, mostHumidity: MOST_W, falling: FALLING } = ROOM;
const { meanHumidity: MEAN, pressure: PRESSURE, saturation: SATURATION } = ROOM;
const { uptake: UPTAKE, release: RELEASE, waterOverWeight: OVER_WEIGHT } = ROOM;
const { condensing: ON_PANES, wallCondensing: ON_WALLS } = ROOM;
const { deviceWater: DEVICE_WATER, bufferG: BUFFER_G } = ROOM;
const { coilAir: COIL_AIR, coilWater: COIL_WATER } = ROOM;
const { massRate: MASS_RATE, fan: FAN, exchange: EXCHANGE } = ROOM;
const { wetG: WET_G, fanHumidity: FAN_W } = ROOM;

const term = (name: WaterTerm): number => ENERGY_TERMS.length + WATER_TERMS.indexOf(name);
const PEOPLE = term('people');
const APPLIANCES = term('appliances');
const DRYING = term('drying');
const CARRIED = term(CARRIED_TERMS[0]);
const DEVICES = term('devices');
const COOLING = term('cooling');

/** Saturated air of -50 to 90 °C loses less than this share of its vapour for each kelvin it cools. [1/K] */
const STEEPEST = 0.13;

const ROOM_STRIDE = ROOM.stride;
const BOOK_STRIDE = BOOK.stride;
