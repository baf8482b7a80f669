/**
 * Where every joule, gram of water and amount of species went, room by room and month by month.
 *
 * A term is positive when it adds to the room. `[month * rooms + room]` in every array; months are
 * counted from the period's first calendar month by the household's clock.
 */
export interface Ledger {
  /** Calendar month (0 to 11) of each row. */
  readonly months: readonly number[];
  readonly rooms: number;
  /** [J] */
  readonly energy: Readonly<Record<EnergyTerm, Float64Array>>;
  /** [kg] */
  readonly water: Readonly<Record<WaterTerm, Float64Array>>;
  /** Per species: [unit m3] */
  readonly species: readonly Readonly<Record<SpeciesTerm, Float64Array>>[];
  /** Air between rooms and outdoors, never below 0; as volume of air at 20 °C, so that what goes in comes out. [m3] */
  readonly air: Readonly<Record<AirTerm, Float64Array>>;
  /** Air through doorways, from the first room to the second and back, `[month * doorways + doorway]`. [m3] */
  readonly doorways: { readonly forth: Float64Array; readonly back: Float64Array };
  /** Change of the stores from start to end, per room. */
  readonly stored: {
    readonly energy: Float64Array;
    readonly water: Float64Array;
    readonly species: readonly Float64Array[];
  };
  /** |sum of flows - change of stores| over throughput, over the whole run. [-] */
  readonly residual: {
    readonly energy: number;
    readonly water: number;
    readonly air: number;
    /** Per species. */
    readonly species: readonly number[];
  };
}

export type EnergyTerm = (typeof ENERGY_TERMS)[number];
export type WaterTerm = (typeof WATER_TERMS)[number];
export type SpeciesTerm = (typeof SPECIES_TERMS)[number];
export type AirTerm = (typeof AIR_TERMS)[number];

/**
 * What air carries, booked against outdoors by the way it leaves: `leakage`, `openings`, `extracts`
 * (fans) and `draught` (flues) are outflow times outdoor less room value, `fans` is supply times supply
 * less outdoor value, and `doorways` add up to zero over the home.
 */
export const CARRIED_TERMS = [
  'leakage',
  'openings',
  'extracts',
  'draught',
  'fans',
  'doorways',
] as const;

/**
 * `phaseChange` is heat freed (condensing, sorption) or taken (evaporation) in the room itself; `held`
 * is what air took to stay at an imposed temperature, `extra` what was given besides by an imposed series.
 */
export const ENERGY_TERMS = [
  'heating',
  'cooling',
  'people',
  'appliances',
  'sun',
  'walls',
  'floors',
  'roofs',
  'partitions',
  'panes',
  ...CARRIED_TERMS,
  'devices',
  'phaseChange',
  'held',
  'extra',
] as const;

/**
 * `drying` evaporates in the room; `buffer` and `film` are inner stores, so they are in `stored`;
 * `held` is what air took to stay at an imposed humidity, `extra` what was given besides by an imposed series.
 */
export const WATER_TERMS = [
  'people',
  'appliances',
  'drying',
  ...CARRIED_TERMS,
  'devices',
  'cooling',
  'runoff',
  'held',
  'extra',
] as const;

/** `leakage` and `openings` count what leaks and window screens hold back of what outdoor air carries in. */
export const SPECIES_TERMS = [
  'people',
  'appliances',
  'materials',
  'leakage',
  'openings',
  'extracts',
  'draught',
  'doorways',
  'devices',
  'deposition',
] as const;

/** Ways of air from outdoors into a room, and from it outdoors: fans supply and extract, flues draw. */
export const AIR_TERMS = [
  'leaksIn',
  'windowsIn',
  'fansIn',
  'leaksOut',
  'windowsOut',
  'extracts',
  'draught',
] as const;
