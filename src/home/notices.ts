/** A value that nobody gave. Low and high are null where a range has no meaning (a name, a choice). */
export interface Assumed {
  /** RFC 6901 pointer to the place in the scenario where the value would be given. */
  readonly path: string;
  readonly value: number | string;
  /** Of a number, as it may be written there; empty for none and for words. */
  readonly unit: string;
  readonly low: number | null;
  readonly high: number | null;
  /** Who says so: a source, or "common practice". */
  readonly source: string;
}

/** A sentence for the person, with an id that stays the same when the words change. */
export interface Notice {
  readonly id: string;
  readonly text: string;
}
