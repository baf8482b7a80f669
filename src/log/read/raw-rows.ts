/** Readings that share their times: all columns of a wide file, or one name of a long one. */
export interface RawRows {
  /** How many rows are filled. */
  count: number;
  /** Clock of the text, or UTC where the text says so, counted like UTC seconds. [s] */
  clock: Float64Array;
  /** Line of each row, counted from 1. */
  line: Int32Array;
  /** One a column; NaN for an empty cell, UNAVAILABLE where the text says that nothing is known. */
  readonly values: Float64Array[];
  /** Cells of a long file that hold words which say nothing, and the first of them. */
  unread: number;
  firstUnread: string;
}

/** Says that from then on nothing is known: a sensor that fell silent. */
export const UNAVAILABLE = Number.POSITIVE_INFINITY;

export function rawRows(columns: number, room: number): RawRows {
  return {
    count: 0,
    clock: new Float64Array(room),
    line: new Int32Array(room),
    values: Array.from({ length: columns }, () => new Float64Array(room)),
    ...{ unread: 0, firstUnread: '' },
  };
}

/** Makes room for one more row. */
export function growRows(rows: RawRows): void {
  if (rows.count < rows.clock.length) return;
  const room = Math.max(64, Math.ceil(rows.count * 1.5));
  const clock = new Float64Array(room);
  clock.set(rows.clock);
  rows.clock = clock;
  const line = new Int32Array(room);
  line.set(rows.line);
  rows.line = line;
  rows.values.forEach((old, k) => {
    const values = new Float64Array(room);
    values.set(old);
    rows.values[k] = values;
  });
}
