import {
  ENERGY_TERMS,
  type EnergyTerm,
  type Ledger,
  SPECIES_TERMS,
  type SpeciesTerm,
  WATER_TERMS,
  type WaterTerm,
} from './ledger.ts';

/** The ledger while it is written. Same layout as Ledger: `[row * rooms + room]`. */
export interface Books {
  readonly rooms: number;
  readonly months: number[];
  readonly energy: Record<EnergyTerm, Float64Array>;
  /** The energy columns of walls, floors, roofs and partitions, by kind of element. */
  readonly byElement: readonly Float64Array[];
  readonly water: Record<WaterTerm, Float64Array>;
  readonly species: Record<SpeciesTerm, Float64Array>[];
  /** Per room, dry air in less out, and in. [kg] */
  readonly airNet: Float64Array;
  readonly airThrough: Float64Array;
}

/** Stores of every room at one moment. */
export interface Stores {
  readonly energy: Float64Array;
  readonly water: Float64Array;
  readonly species: readonly Float64Array[];
}

/** @param months  calendar month (0 to 11) of each row */
export function openBooks(rooms: number, species: number, months: readonly number[]): Books {
  const columns = <T extends string>(terms: readonly T[]): Record<T, Float64Array> =>
    Object.fromEntries(
      terms.map((term) => [term, new Float64Array(months.length * rooms)]),
    ) as Record<T, Float64Array>;
  const energy = columns(ENERGY_TERMS);
  return {
    rooms,
    months: [...months],
    energy,
    byElement: [energy.walls, energy.floors, energy.roofs, energy.partitions],
    water: columns(WATER_TERMS),
    species: Array.from({ length: species }, () => columns(SPECIES_TERMS)),
    airNet: new Float64Array(rooms),
    airThrough: new Float64Array(rooms),
  };
}

/** Compare what was booked with what is stored, and hand the ledger out. */
export function closeBooks(books: Books, before: Stores, after: Stores): Ledger {
  const { rooms } = books;
  const stored = {
    energy: difference(after.energy, before.energy),
    water: difference(after.water, before.water),
    species: after.species.map((column, s) => difference(column, before.species[s]!)),
  };
  return {
    months: books.months,
    rooms,
    energy: books.energy,
    water: books.water,
    species: books.species,
    stored,
    residual: {
      energy: residual(Object.values(books.energy), stored.energy, rooms),
      water: residual(Object.values(books.water), stored.water, rooms),
      air: worst(books.airNet, books.airThrough),
      species: books.species.map((b, s) => residual(Object.values(b), stored.species[s]!, rooms)),
    },
  };
}

/** Largest |sum of terms - stored| of any room, over the sum of |terms| of all rooms. */
function residual(terms: readonly Float64Array[], stored: Float64Array, rooms: number): number {
  const net = new Float64Array(rooms);
  let through = 0;
  for (const term of terms) {
    for (let k = 0; k < term.length; k++) {
      net[k % rooms]! += term[k]!;
      through += Math.abs(term[k]!);
    }
  }
  let most = 0;
  for (let i = 0; i < rooms; i++) most = Math.max(most, Math.abs(net[i]! - stored[i]!));
  return through > 0 ? most / through : most;
}

function worst(net: Float64Array, through: Float64Array): number {
  const all = through.reduce((sum, x) => sum + x, 0);
  return all > 0 ? net.reduce((most, x) => Math.max(most, Math.abs(x)), 0) / all : 0;
}

const difference = (a: Float64Array, b: Float64Array): Float64Array => a.map((x, i) => x - b[i]!);
