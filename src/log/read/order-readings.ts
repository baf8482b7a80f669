/** Which rows count, in the order of time. */
export interface Ordered {
  /** Numbers of the rows; null where all of them count as they stand. */
  readonly rows: Int32Array | null;
  /** Rows at a time that another row has too, with like readings and with unlike ones. */
  readonly doubled: number;
  readonly unlike: number;
  /** Rows that run an hour back, as where summer time ends on a clock without a zone. */
  readonly repeatedHour: number;
  /** First row at which time jumps back for no such reason; -1 for none. */
  readonly reset: number;
  readonly order: 'ascending' | 'descending' | 'none';
}

/**
 * Put rows in the order of time: newest first is turned round, rows in no order are sorted, an
 * export that begins again is laid over itself.
 *
 * Where a clock jumps back only here and there it was set anew, and nobody knows what the rest means.
 *
 * @param times  one a row [s]
 * @param same   whether two rows hold the same readings
 */
export function orderReadings(
  times: Float64Array,
  same: (a: number, b: number) => boolean,
): Ordered {
  const none = { doubled: 0, unlike: 0, repeatedHour: 0, reset: -1 } as const;
  const back = jumpsBack(times);
  if (back.length === 0 && isStrict(times)) return { ...none, rows: null, order: 'ascending' };
  const descending = back.length > forwardSteps(times);
  const order = descending
    ? 'descending'
    : back.length > times.length * SELDOM + 3
      ? 'none'
      : 'ascending';
  const rows = Int32Array.from(times, (_, k) => (descending ? times.length - 1 - k : k));
  let repeatedHour = 0;
  let reset = -1;
  let kept = rows;
  if (order === 'ascending' && back.length > 0) {
    const sifted = siftJumps(times, back, same);
    ({ repeatedHour, reset } = sifted);
    kept = sifted.rows;
  }
  if (order !== 'ascending' || back.length > 0) {
    kept.sort((a, b) => times[a]! - times[b]! || (descending ? b - a : a - b));
  }
  const { rows: once, doubled, unlike } = eachOnce(times, kept, same);
  return { rows: once, doubled, unlike, repeatedHour, reset, order };
}

function jumpsBack(times: Float64Array): number[] {
  const found: number[] = [];
  for (let k = 1; k < times.length; k++) if (times[k]! < times[k - 1]!) found.push(k);
  return found;
}

function forwardSteps(times: Float64Array): number {
  let count = 0;
  for (let k = 1; k < times.length; k++) if (times[k]! > times[k - 1]!) count++;
  return count;
}

function isStrict(times: Float64Array): boolean {
  for (let k = 1; k < times.length; k++) if (!(times[k]! > times[k - 1]!)) return false;
  return true;
}

/** What each jump back of a nearly ascending file is: an hour run twice, an overlap, or a clock set anew. */
function siftJumps(
  times: Float64Array,
  back: readonly number[],
  same: (a: number, b: number) => boolean,
) {
  const keep = new Uint8Array(times.length).fill(1);
  let repeatedHour = 0;
  let reset = -1;
  let high = 0; // row with the latest time so far
  let k = 0;
  for (const jump of back) {
    for (; k < jump; k++) if (times[k]! > times[high]!) high = k;
    if (keep[jump] === 0) continue;
    let end = jump;
    while (end < times.length && times[end]! <= times[high]!) end++;
    const fall = times[high]! - times[jump]!;
    if (fall <= HOUR) {
      for (let n = jump; n < end; n++) keep[n] = 0;
      repeatedHour += end - jump;
    } else if (!isOverlap(times, jump, end, same) && reset < 0) reset = jump;
  }
  const rows: number[] = [];
  for (let n = 0; n < times.length; n++) if (keep[n] === 1) rows.push(n);
  return { rows: Int32Array.from(rows), repeatedHour, reset };
}

/** Whether most rows of a stretch were there before, with the same readings. */
function isOverlap(
  times: Float64Array,
  from: number,
  to: number,
  same: (a: number, b: number) => boolean,
): boolean {
  const before = new Map<number, number>();
  for (let k = 0; k < from; k++) before.set(times[k]!, k);
  let alike = 0;
  for (let k = from; k < to; k++) {
    const row = before.get(times[k]!);
    if (row !== undefined && same(row, k)) alike++;
  }
  return alike >= (to - from) * 0.9;
}

/** One row a time: the one that was written later. */
function eachOnce(times: Float64Array, rows: Int32Array, same: (a: number, b: number) => boolean) {
  const once = new Int32Array(rows.length);
  let count = 0;
  let doubled = 0;
  let unlike = 0;
  for (const row of rows) {
    const before = count > 0 ? once[count - 1]! : -1;
    if (before >= 0 && times[before] === times[row]) {
      if (same(before, row)) doubled++;
      else unlike++;
      once[count - 1] = row;
    } else once[count++] = row;
  }
  return { rows: once.subarray(0, count), doubled, unlike };
}

const HOUR = 3600;
const SELDOM = 0.005;
