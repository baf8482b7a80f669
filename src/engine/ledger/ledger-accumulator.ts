import {
  AIR_TERMS,
  ENERGY_TERMS,
  type Ledger,
  SPECIES_TERMS,
  type SpeciesTerm,
  WATER_TERMS,
} from './ledger.ts';

/**
 * The ledger while it is written: one record per month and room, first energy, then water; and one
 * record per month, room and species. The n-th term of a list in ledger.ts is the n-th field.
 */
export interface LedgerAccumulator {
  readonly rooms: number;
  readonly months: readonly number[];
  /** Record of month q and room i begins at `(q * rooms + i) * BOOK_STRIDE`. */
  readonly flows: Float64Array;
  /** Record of month q, room i and species s begins at `((q * rooms + i) * speciesCount + s) * TRACER_BOOK_STRIDE`. */
  readonly species: Float64Array;
  readonly speciesCount: number;
  /** Record of month q and room i begins at `(q * rooms + i) * AIR_BOOK_STRIDE`. [kg] */
  readonly air: Float64Array;
  /** Forth and back of month q and doorway d are at `2 * (q * doorways + d)` and behind it. [kg] */
  readonly doorways: Float64Array;
}

/** Stores of every room at one moment. */
export interface Stores {
  readonly energy: Float64Array;
  readonly water: Float64Array;
  readonly species: readonly Float64Array[];
}

/** Dry air that a run moved. */
export interface MovedAir {
  /** Per room, in less out. [kg] */
  readonly net: Float64Array;
  /** Per room, in. [kg] */
  readonly through: Float64Array;
  /** Of room air at 20 °C. [kg/m3] */
  readonly density: number;
}

/** @param months  calendar month (0 to 11) of each row */
export function createLedgerAccumulator(
  rooms: number,
  doorways: number,
  speciesCount: number,
  months: readonly number[],
): LedgerAccumulator {
  const records = months.length * rooms;
  return {
    rooms,
    months,
    flows: new Float64Array(records * BOOK_STRIDE),
    species: new Float64Array(speciesCount * records * TRACER_BOOK_STRIDE),
    speciesCount,
    air: new Float64Array(records * AIR_BOOK_STRIDE),
    doorways: new Float64Array(2 * months.length * doorways),
  };
}

/**
 * Compare the accumulated flows with the change of the stores, and return the ledger.
 *
 * @param outdoors  of each species, what the rooms would hold of outdoor air [unit m3]
 */
export function finishLedger(
  ledger: LedgerAccumulator,
  before: Stores,
  after: Stores,
  moved: MovedAir,
  outdoors: readonly number[],
): Ledger {
  const { rooms, months } = ledger;
  const records = months.length * rooms;
  const energy = columns(ledger.flows, BOOK_STRIDE, records, ENERGY_TERMS, 0);
  const water = columns(ledger.flows, BOOK_STRIDE, records, WATER_TERMS, ENERGY_TERMS.length);
  const speciesStride = ledger.speciesCount * TRACER_BOOK_STRIDE;
  const species = Array.from(
    { length: ledger.speciesCount },
    (_, s): Record<SpeciesTerm, Float64Array> =>
      columns(ledger.species, speciesStride, records, SPECIES_TERMS, s * TRACER_BOOK_STRIDE),
  );
  const air = volumes(ledger.air, moved.density);
  const ways = volumes(ledger.doorways, moved.density);
  const stored = {
    energy: difference(after.energy, before.energy),
    water: difference(after.water, before.water),
    species: after.species.map((column, s) => difference(column, before.species[s]!)),
  };
  return {
    months,
    rooms,
    energy,
    water,
    species,
    air: columns(air, AIR_BOOK_STRIDE, records, AIR_TERMS, 0),
    doorways: columns(ways, 2, ways.length / 2, ['forth', 'back'], 0),
    stored,
    residual: {
      energy: residual(Object.values(energy), stored.energy, before.energy),
      water: residual(Object.values(water), stored.water, before.water),
      air: worst(moved.net, moved.through),
      species: species.map((terms, s) =>
        residual(Object.values(terms), stored.species[s]!, before.species[s]!, outdoors[s]!),
      ),
    },
  };
}

/** [kg] -> [m3] */
function volumes(masses: Float64Array, density: number): Float64Array {
  const found = new Float64Array(masses.length);
  for (let k = 0; k < masses.length; k++) found[k] = masses[k]! / density;
  return found;
}

/** Fields of all records, from field number `field` on, as one array per term. */
function columns<T extends string>(
  flat: Float64Array,
  stride: number,
  records: number,
  terms: readonly T[],
  field: number,
): Record<T, Float64Array> {
  return Object.fromEntries(
    terms.map((term, k) => [term, column(flat, stride, records, field + k)]),
  ) as Record<T, Float64Array>;
}

function column(flat: Float64Array, stride: number, records: number, field: number): Float64Array {
  const values = new Float64Array(records);
  for (let r = 0; r < records; r++) values[r] = flat[r * stride + field]!;
  return values;
}

/**
 * Largest |sum of terms - stored| of any room, over the sum of |terms| of all rooms; or over what the
 * rooms held at the start or would hold of outdoor air, where hardly anything moved and only rounding is
 * left to compare.
 */
function residual(
  terms: readonly Float64Array[],
  stored: Float64Array,
  held: Float64Array,
  outdoors = 0,
): number {
  const rooms = stored.length;
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
  const whole = Math.max(
    through,
    held.reduce((sum, x) => sum + Math.abs(x), 0),
    outdoors,
    LEAST_WHOLE,
  );
  return most / whole;
}

function worst(net: Float64Array, through: Float64Array): number {
  const all = through.reduce((sum, x) => sum + x, 0);
  return all > 0 ? net.reduce((most, x) => Math.max(most, Math.abs(x)), 0) / all : 0;
}

/**
 * Below this, numbers are so near to the smallest there is that they have no full precision left: a
 * species that settled for a month in a room without air change ends there.
 */
const LEAST_WHOLE = 1e-290;

const difference = (a: Float64Array, b: Float64Array): Float64Array => a.map((x, i) => x - b[i]!);

/** A record of heat and water, one of a species, and one of air. */
export const BOOK = { stride: ENERGY_TERMS.length + WATER_TERMS.length };
export const TRACER_BOOK = { stride: SPECIES_TERMS.length };
export const AIR_BOOK = { stride: AIR_TERMS.length };

const BOOK_STRIDE = BOOK.stride;
const TRACER_BOOK_STRIDE = TRACER_BOOK.stride;
const AIR_BOOK_STRIDE = AIR_BOOK.stride;
