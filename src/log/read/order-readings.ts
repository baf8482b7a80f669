import { SECONDS_PER_HOUR } from '../../units/time-units.ts';

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
  const rising = new Int32Array(times.length); // rows that led so far, times ascending
  let led = 0;
  let repeatedHour = 0;
  let reset = -1;
  let k = 0;
  for (const jump of back) {
    if (jump < k) continue;
    while (k < jump) rising[led++] = k++;
    const high = times[rising[led - 1]!]!;
    let end = jump;
    while (end < times.length && times[end]! <= high) end++;
    if (high - times[jump]! <= SECONDS_PER_HOUR) {
      keep.fill(0, jump, end);
      repeatedHour += end - jump;
    } else if (!isOverlap(times, rising.subarray(0, led), jump, end, same) && reset < 0) {
      reset = jump;
    }
    k = end;
  }
  const rows = Int32Array.from(times, (_, n) => n).filter((n) => keep[n] === 1);
  return { rows, repeatedHour, reset };
}

/** Whether most rows of a stretch were there before, with the same readings. */
function isOverlap(
  times: Float64Array,
  before: Int32Array,
  from: number,
  to: number,
  same: (a: number, b: number) => boolean,
): boolean {
  let alike = 0;
  for (let k = from; k < to; k++) {
    const row = rowAt(times, before, times[k]!);
    if (row >= 0 && same(row, k)) alike++;
  }
  return alike >= (to - from) * 0.9;
}

/** Row of an instant among rows in the order of time; -1 for none. */
function rowAt(times: Float64Array, rows: Int32Array, instant: number): number {
  let [low, high] = [0, rows.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (times[rows[middle]!]! <= instant) low = middle;
    else high = middle - 1;
  }
  const row = rows[low] ?? -1;
  return row >= 0 && times[row] === instant ? row : -1;
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

const SELDOM = 0.005;
