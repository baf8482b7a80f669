/** A number that stands in for one nobody gave, with the range it may lie in. */
export interface Preset {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Who says so: a source, or "common practice". */
  readonly source: string;
}

export const COMMON = 'common practice';

export const preset = (
  value: number,
  low: number,
  high: number,
  source: string = COMMON,
): Preset => ({ value, low, high, source });

/** A preset times something, such as power for each litre. */
export const scaled = ({ value, low, high, source }: Preset, by: number): Preset => ({
  value: Number((value * by).toPrecision(6)),
  low: low * by,
  high: high * by,
  source,
});
