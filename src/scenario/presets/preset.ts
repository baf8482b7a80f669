/** A number that stands in for one nobody gave. */
export interface Preset {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Who says so: a source, or "common practice". */
  readonly source: string;
}

export const COMMON = 'common practice';
