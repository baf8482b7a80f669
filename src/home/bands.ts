/** The range of a quantity that counts as fine in a room, with its reason. */
export interface Band {
  /** Lower edge, -Infinity for none. */
  readonly low: number;
  /** Upper edge, Infinity for none. */
  readonly high: number;
  /** Who says so: a source, or "common practice". */
  readonly reason: string;
}

/** Bands of one room. Temperatures are operative. */
export interface RoomBands {
  /** [°C] */
  readonly temperature: Band;
  /** [%] */
  readonly humidity: Band;
  /** By species name, in the species' unit. `hours` is the averaging time, 0 for none. */
  readonly species: Readonly<Record<string, Band & { readonly hours: number }>>;
}
