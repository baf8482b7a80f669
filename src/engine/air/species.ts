import type { DayInputs } from '../../control/day-inputs.ts';
import type { f64, i32 } from '../../units/portable.ts';
import type { Model } from '../layout/model.ts';
import { DOOR, FRAME, ROOM, TRACER } from '../layout/state-layout.ts';
import { SPECIES_TERMS, type SpeciesTerm } from '../ledger/ledger.ts';
import { TRACER_BOOK } from '../ledger/ledger-accumulator.ts';
import { overImplicitWeight } from '../numerics/implicit-weight.ts';
import { solveSparseTogether } from '../numerics/sparse-together.ts';

/**
 * Step all species in all rooms together, and add them to the ledger.
 *
 * Outdoor levels of the step are in `species.outdoor`. In masses of dry air throughout: a source in (unit m3/s) times kg/m3 stands beside flows in kg/s.
 *
 * @param day      sources of people and appliances, this step's from `at` on [species unit m3/s]
 * @param book     TRACER_BOOK records, this month's from that of room `row` on
 */
export function stepSpecies(m: Model, day: DayInputs, at: i32, book: Float64Array, row: i32): void {
  const { count, matrixCount, matrix, matrixOf, factor, rhs, solution } = m.species;
  if (count === 0) return;
  const parts = partsOf(m);
  for (let part = 0; part < parts; part++) {
    fillMatrices(m);
    assemble(m, day, at, parts);
    solveSparseTogether(m.elimination, matrix, matrixOf, factor, matrixCount, count, rhs, solution);
    settle(m, part, parts);
  }
  bookRooms(m, day, at, book, row);
  bookDoors(m, book, row);
}

/**
 * Parts that a step is taken in: more than one where outdoor air renews much of a room in it, as while
 * a home is aired, because what is left of the old air shows for hours.
 */
function partsOf({ rooms, roomCount }: Model): i32 {
  let most: f64 = 0;
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    most = Math.max(most, (rooms[r + EXCHANGE]! + rooms[r + FAN]!) / rooms[r + MASS_RATE]!);
  }
  return Math.trunc(Math.min(MOST_PARTS, 1 + most / RENEWED)) as i32;
}

function fillMatrices({
  species: { matrix, matrixCount: matrices },
  flow,
  elimination,
}: Model): void {
  const { size } = elimination;
  for (let k = 0; k < size; k++) {
    const value = flow[k]!;
    for (let g = 0; g < matrices; g++) matrix[k * matrices + g] = value;
  }
}

function assemble(m: Model, day: DayInputs, at: i32, parts: i32): void {
  const { rooms, roomCount, tracers, density } = m;
  const {
    count,
    matrixCount: matrices,
    matrixOf,
    example,
    matrix,
    overWeight,
    store,
    rhs,
    outdoor,
    heldBack,
    heldByWindows,
  } = m.species;
  const { peopleSpecies, applianceSpecies } = day;
  const { diagonal } = m.elimination;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const first = i * count;
    const given = (at + i) * count;
    const own = diagonal[i]! * matrices;
    const perStep = parts * rooms[r + MASS_RATE]!;
    for (let g = 0; g < matrices; g++) {
      const t = (first + example[g]!) * TRACER_STRIDE;
      const loss = matrix[own + g]! + density * (tracers[t + DEPOSITION]! + tracers[t + FILTER]!);
      const over = overImplicitWeight(loss / perStep);
      overWeight[g] = over;
      store[g] = perStep * over;
      matrix[own + g] = loss + perStep * over;
    }
    const into = rooms[r + EXCHANGE]! + rooms[r + FAN]!;
    const leak = rooms[r + LEAK]!;
    const opening = rooms[r + OPENING]!;
    for (let q = 0; q < count; q++) {
      const t = (first + q) * TRACER_STRIDE;
      const g = matrixOf[q]!;
      const source =
        peopleSpecies[given + q]! +
        applianceSpecies[given + q]! +
        tracers[t + DEVICE]! +
        tracers[t + EMISSION]!;
      tracers[t + OVER_WEIGHT] = overWeight[g]!;
      rhs[first + q] =
        store[g]! * tracers[t + LEVEL]! +
        (into - heldBack[q]! * leak - heldByWindows[q]! * opening) * outdoor[q]! +
        density * source;
    }
  }
}

/** Take over what was solved; after the last part the solution is the mean of the step. */
function settle(
  { tracers, roomCount, species: { count, solution } }: Model,
  part: i32,
  parts: i32,
): void {
  const values = roomCount * count;
  for (let v = 0; v < values; v++) {
    const t = v * TRACER_STRIDE;
    const c = solution[v]!;
    const before = tracers[t + LEVEL]!;
    const sum: f64 = part === 0 ? 0 : tracers[t + MEAN]!;
    const mean = sum + c / parts;
    tracers[t + MEAN] = mean;
    tracers[t + LEVEL] = before + (c - before) * tracers[t + OVER_WEIGHT]!;
    solution[v] = mean;
  }
}

function bookRooms(m: Model, day: DayInputs, at: i32, book: Float64Array, row: i32): void {
  const { rooms, roomCount, tracers, dt, density } = m;
  const { count, outdoor, heldBack, heldByWindows, solution } = m.species;
  const { peopleSpecies, applianceSpecies } = day;
  const perMass = dt / density;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const leakOut = rooms[r + LEAK_OUT]! * perMass;
    const leakIn = rooms[r + LEAK]! * perMass;
    const openingIn = rooms[r + OPENING]! * perMass;
    const openingOut = rooms[r + OPENING_OUT]! * perMass;
    const extract = rooms[r + EXTRACT]! * perMass;
    const draught = rooms[r + DRAUGHT]! * perMass;
    const given = (at + i) * count;
    for (let q = 0; q < count; q++) {
      const t = (i * count + q) * TRACER_STRIDE;
      const k = ((row + i) * count + q) * BOOK_STRIDE;
      const c = solution[i * count + q]!;
      const fall = outdoor[q]! - c;
      const held = heldBack[q]! * leakIn * outdoor[q]!;
      const devices = tracers[t + DEVICE]! - tracers[t + FILTER]! * c;
      const emission = tracers[t + EMISSION]!;
      const people = peopleSpecies[given + q]!;
      const appliances = applianceSpecies[given + q]!;
      if (people !== 0) book[k + PEOPLE] = book[k + PEOPLE]! + people * dt;
      if (appliances !== 0) book[k + APPLIANCES] = book[k + APPLIANCES]! + appliances * dt;
      if (emission !== 0) book[k + MATERIALS] = book[k + MATERIALS]! + emission * dt;
      book[k + LEAKAGE] = book[k + LEAKAGE]! + leakOut * fall - held;
      if (openingIn !== 0 || openingOut !== 0) {
        const caught = heldByWindows[q]! * openingIn * outdoor[q]!;
        book[k + OPENINGS] = book[k + OPENINGS]! + openingOut * fall - caught;
      }
      if (extract !== 0) book[k + EXTRACTS] = book[k + EXTRACTS]! + extract * fall;
      if (draught !== 0) book[k + FLUES] = book[k + FLUES]! + draught * fall;
      book[k + DEVICES] = book[k + DEVICES]! + devices * dt;
      book[k + FALLEN] = book[k + FALLEN]! - tracers[t + DEPOSITION]! * c * dt;
    }
  }
}

function bookDoors(m: Model, book: Float64Array, row: i32): void {
  const { doors, frames, doorCount, dt, density } = m;
  const { count, outdoor, solution } = m.species;
  const perMass = dt / density;
  for (let d = 0; d < doorCount; d++) {
    const a = frames[d * FRAME_STRIDE + A]!;
    const b = frames[d * FRAME_STRIDE + B]!;
    const forth = doors[d * DOOR_STRIDE + FORTH]! * perMass;
    const back = doors[d * DOOR_STRIDE + BACK]! * perMass;
    for (let q = 0; q < count; q++) {
      const out = outdoor[q]!;
      const passed =
        forth * (solution[a * count + q]! - out) - back * (solution[b * count + q]! - out);
      const ka = ((row + a) * count + q) * BOOK_STRIDE + DOORWAYS;
      const kb = ((row + b) * count + q) * BOOK_STRIDE + DOORWAYS;
      book[ka] = book[ka]! - passed;
      book[kb] = book[kb]! + passed;
    }
  }
}

const { massRate: MASS_RATE, leak: LEAK, opening: OPENING, fan: FAN, exchange: EXCHANGE } = ROOM;
const { leakOut: LEAK_OUT, openingOut: OPENING_OUT, extract: EXTRACT, draught: DRAUGHT } = ROOM;
const {
  level: LEVEL,
  mean: MEAN,
  devices: DEVICE,
  emission: EMISSION,
  deposition: DEPOSITION,
  filter: FILTER,
  overWeight: OVER_WEIGHT,
} = TRACER;
const { forth: FORTH, back: BACK } = DOOR;
const { a: A, b: B } = FRAME;

const term = (name: SpeciesTerm): number => SPECIES_TERMS.indexOf(name);
const PEOPLE = term('people');
const APPLIANCES = term('appliances');
const MATERIALS = term('materials');
const LEAKAGE = term('leakage');
const OPENINGS = term('openings');
const EXTRACTS = term('extracts');
const FLUES = term('draught');
const DOORWAYS = term('doorways');
const DEVICES = term('devices');
const FALLEN = term('deposition');

/** Share of a room's air that may be renewed in one part of a step. [-] */
const RENEWED = 0.5;
const MOST_PARTS = 4;

const ROOM_STRIDE = ROOM.stride;
const TRACER_STRIDE = TRACER.stride;
const DOOR_STRIDE = DOOR.stride;
const FRAME_STRIDE = FRAME.stride;
const BOOK_STRIDE = TRACER_BOOK.stride;
