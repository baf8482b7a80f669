import { SPECIES_TERMS, type SpeciesTerm } from './ledger.ts';
import { TRACER_BOOK } from './ledger-accumulator.ts';
import type { Model } from './model.ts';
import { overImplicitWeight } from './numerics/implicit-weight.ts';
import { solveSparse } from './numerics/sparse.ts';
import { DOOR, FRAME, ROOM, TRACER } from './state-layout.ts';

/**
 * Step one species in all rooms together, and add it to the ledger.
 *
 * In masses of dry air throughout: a source in (unit m3/s) times kg/m3 stands beside flows in kg/s.
 *
 * @param index    number of the species
 * @param outdoor  outdoor level [species unit]
 * @param people   sources by room, this step's from `at` on [species unit m3/s]
 * @param appliances  sources of appliances by room, from `at` on [species unit m3/s]
 * @param book     TRACER_BOOK records, this species' and month's from record `row` on
 */
export function stepSpecies(
  m: Model,
  index: number,
  outdoor: number,
  people: Float64Array,
  appliances: Float64Array,
  at: number,
  book: Float64Array,
  row: number,
): void {
  const { rooms, roomCount, tracers, dt, density, elimination, matrix, flow, rhs, solution } = m;
  const { diagonal } = elimination;
  const from = index * roomCount * TRACER_STRIDE;
  const penetration = m.home.species[index]!.penetration;
  for (let k = 0; k < matrix.length; k++) matrix[k] = flow[k]!;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const t = from + i * TRACER_STRIDE;
    const k = diagonal[i]!;
    const loss = flow[k]! + density * (tracers[t + DEPOSITION]! + tracers[t + FILTER]!);
    const perStep = rooms[r + MASS_RATE]!;
    const overWeight = overImplicitWeight(loss / perStep);
    const store = perStep * overWeight;
    tracers[t + OVER_WEIGHT] = overWeight;
    matrix[k] = loss + store;
    const into = rooms[r + EXCHANGE]! + rooms[r + FAN]! - (1 - penetration) * rooms[r + LEAK]!;
    const source = people[at + i]! + appliances[at + i]! + tracers[t + DEVICE]!;
    rhs[i] = store * tracers[t + LEVEL]! + into * outdoor + density * source;
  }
  solveSparse(elimination, matrix, rhs, solution);
  const perMass = dt / density;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const t = from + i * TRACER_STRIDE;
    const k = (row + i) * TRACER_BOOK_STRIDE;
    const c = solution[i]!;
    const before = tracers[t + LEVEL]!;
    tracers[t + MEAN] = c;
    tracers[t + LEVEL] = before + (c - before) * tracers[t + OVER_WEIGHT]!;
    const fall = perMass * (outdoor - c);
    book[k + PEOPLE] = book[k + PEOPLE]! + people[at + i]! * dt;
    book[k + APPLIANCES] = book[k + APPLIANCES]! + appliances[at + i]! * dt;
    const held = (1 - penetration) * rooms[r + LEAK]! * perMass * outdoor;
    book[k + LEAKAGE] = book[k + LEAKAGE]! + rooms[r + LEAK_OUT]! * fall - held;
    book[k + OPENINGS] = book[k + OPENINGS]! + rooms[r + OPENING_OUT]! * fall;
    book[k + EXTRACTS] = book[k + EXTRACTS]! + rooms[r + EXTRACT]! * fall;
    book[k + FLUES] = book[k + FLUES]! + rooms[r + DRAUGHT]! * fall;
    const devices = tracers[t + DEVICE]! - tracers[t + FILTER]! * c;
    book[k + DEVICES] = book[k + DEVICES]! + devices * dt;
    book[k + FALLEN] = book[k + FALLEN]! - tracers[t + DEPOSITION]! * c * dt;
  }
  bookDoors(m, from, outdoor, book, row);
}

function bookDoors(
  { tracers, doors, frames, doorCount, dt, density }: Model,
  from: number,
  outdoor: number,
  book: Float64Array,
  row: number,
): void {
  for (let d = 0; d < doorCount; d++) {
    const a = frames[d * FRAME_STRIDE + A]!;
    const b = frames[d * FRAME_STRIDE + B]!;
    const more = tracers[from + a * TRACER_STRIDE + MEAN]! - outdoor;
    const other = tracers[from + b * TRACER_STRIDE + MEAN]! - outdoor;
    const back = doors[d * DOOR_STRIDE + BACK]! * other;
    const passed = ((doors[d * DOOR_STRIDE + FORTH]! * more - back) * dt) / density;
    const ka = (row + a) * TRACER_BOOK_STRIDE + DOORWAYS;
    const kb = (row + b) * TRACER_BOOK_STRIDE + DOORWAYS;
    book[ka] = book[ka]! - passed;
    book[kb] = book[kb]! + passed;
  }
}

const { massRate: MASS_RATE, leak: LEAK, fan: FAN, exchange: EXCHANGE } = ROOM;
const { leakOut: LEAK_OUT, openingOut: OPENING_OUT, extract: EXTRACT, draught: DRAUGHT } = ROOM;
const {
  level: LEVEL,
  mean: MEAN,
  devices: DEVICE,
  deposition: DEPOSITION,
  filter: FILTER,
  overWeight: OVER_WEIGHT,
} = TRACER;
const { forth: FORTH, back: BACK } = DOOR;
const { a: A, b: B } = FRAME;

const term = (name: SpeciesTerm): number => SPECIES_TERMS.indexOf(name);
const PEOPLE = term('people');
const APPLIANCES = term('appliances');
const LEAKAGE = term('leakage');
const OPENINGS = term('openings');
const EXTRACTS = term('extracts');
const FLUES = term('draught');
const DOORWAYS = term('doorways');
const DEVICES = term('devices');
const FALLEN = term('deposition');

const ROOM_STRIDE = ROOM.stride;
const TRACER_STRIDE = TRACER.stride;
const DOOR_STRIDE = DOOR.stride;
const FRAME_STRIDE = FRAME.stride;
const TRACER_BOOK_STRIDE = TRACER_BOOK.stride;
