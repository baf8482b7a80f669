import type { Day } from '../control/day.ts';
import type { Air } from './air.ts';
import type { Books } from './books.ts';
import type { Model } from './model.ts';
import { implicitWeight } from './numerics/implicit-weight.ts';
import { solveSparse } from './numerics/sparse.ts';

/** Everything about one species that changes from step to step. */
export interface SpeciesState {
  /** Per room: concentration at the start, mean over the step. [species unit] */
  readonly level: Float64Array;
  readonly mean: Float64Array;
  /** Per room: added by devices, negative for a purifier. [species unit m3/s] */
  readonly devices: Float64Array;
  /** Per room: loss by deposition. [m3/s of room air] */
  readonly deposition: Float64Array;
  /** Share that survives the way in through leaks. [-] */
  readonly penetration: number;
  /** Scratch. */
  readonly overWeight: Float64Array;
  readonly matrix: Float64Array;
  readonly rhs: Float64Array;
}

export function createSpecies(m: Model, index: number): SpeciesState {
  const perRoom = (): Float64Array => new Float64Array(m.rooms);
  return {
    level: perRoom(),
    mean: perRoom(),
    devices: perRoom(),
    deposition: Float64Array.from(m.home.rooms, (r) => (r.deposition[index] ?? 0) * r.volume),
    penetration: m.home.species[index]!.penetration,
    overWeight: perRoom(),
    matrix: new Float64Array(m.elimination.size),
    rhs: perRoom(),
  };
}

/**
 * Step one species in all rooms at once.
 *
 * @param outdoor  outdoor level [species unit]
 * @param people   sources by room, this step's from `at` on [species unit m3/s]
 * @param things   the same for things
 */
export function stepSpecies(
  m: Model,
  s: SpeciesState,
  air: Air,
  people: Float64Array,
  things: Float64Array,
  at: number,
  outdoor: number,
): void {
  const { rooms, dt, elimination, doorAB, doorBA, paths } = m;
  const { diagonal } = elimination;
  const { matrix, rhs, level, mean, deposition, penetration, overWeight } = s;
  const perMass = 1 / m.density;
  matrix.fill(0);
  for (let d = 0; d < paths.doorways; d++) {
    const a = diagonal[paths.doorA[d]!]!;
    const b = diagonal[paths.doorB[d]!]!;
    const ab = doorAB[d]!;
    const ba = doorBA[d]!;
    const toA = perMass * air.back[d]!;
    const toB = perMass * air.forth[d]!;
    matrix[ab] = matrix[ab]! - toA;
    matrix[ba] = matrix[ba]! - toB;
    matrix[a] = matrix[a]! + toA;
    matrix[b] = matrix[b]! + toB;
  }
  for (let i = 0; i < rooms; i++) {
    const k = diagonal[i]!;
    const leak = perMass * air.leak[i]!;
    const direct = perMass * (air.opening[i]! + air.fan[i]!);
    const loss = matrix[k]! + leak + direct + deposition[i]!;
    const volume = paths.volume[i]!;
    const weight = implicitWeight((loss * dt) / volume);
    const store = volume / (weight * dt);
    overWeight[i] = 1 / weight;
    matrix[k] = loss + store;
    rhs[i] =
      store * level[i]! +
      (leak * penetration + direct) * outdoor +
      people[at + i]! +
      things[at + i]! +
      s.devices[i]!;
  }
  solveSparse(elimination, matrix, rhs, mean);
  for (let i = 0; i < rooms; i++) {
    level[i] = level[i]! + (mean[i]! - level[i]!) * overWeight[i]!;
  }
}

/** Book the step. What leaks lose on the way in never reaches the room, so it is not booked. */
export function bookSpecies(
  m: Model,
  s: SpeciesState,
  air: Air,
  day: Day,
  index: number,
  at: number,
  outdoor: number,
  books: Books,
  row: number,
): void {
  const { rooms, dt, paths } = m;
  const { mean, deposition, penetration } = s;
  const book = books.species[index]!;
  const people = day.peopleSpecies[index]!;
  const things = day.thingsSpecies[index]!;
  const perMass = dt / m.density;
  for (let i = 0; i < rooms; i++) {
    const k = row + i;
    const c = mean[i]!;
    book.people[k] = book.people[k]! + people[at + i]! * dt;
    book.things[k] = book.things[k]! + things[at + i]! * dt;
    book.leakage[k] = book.leakage[k]! + perMass * air.leak[i]! * (penetration * outdoor - c);
    book.openings[k] = book.openings[k]! + perMass * air.opening[i]! * (outdoor - c);
    book.fans[k] = book.fans[k]! + perMass * air.fan[i]! * (outdoor - c);
    book.devices[k] = book.devices[k]! + s.devices[i]! * dt;
    book.deposition[k] = book.deposition[k]! - deposition[i]! * c * dt;
  }
  for (let d = 0; d < paths.doorways; d++) {
    const a = paths.doorA[d]!;
    const b = paths.doorB[d]!;
    const rise = perMass * (mean[a]! - mean[b]!);
    book.doorways[row + b] = book.doorways[row + b]! + air.forth[d]! * rise;
    book.doorways[row + a] = book.doorways[row + a]! - air.back[d]! * rise;
  }
}

/** Amount of the species in each room's air. [species unit m3] */
export function storedSpecies(m: Model, s: SpeciesState): Float64Array {
  return s.level.map((c, i) => c * m.paths.volume[i]!);
}
