/** The instant that a cell of a file names, with its distance from UTC; NaN where it names none. [s UTC] */
export const instantOf = (cell: string | undefined): number =>
  cell !== undefined && ISO.test(cell) ? Date.parse(cell) / 1000 : Number.NaN;

/** How such a cell is described. */
export const INSTANT_WORDS = 'a time with its distance from UTC, such as 2024-01-01T00:30Z';

const ISO = /^\d{4}-\d\d-\d\d[T ]\d\d:\d\d(:\d\d(\.\d+)?)?(Z|[+-]\d\d:?\d\d)$/;
