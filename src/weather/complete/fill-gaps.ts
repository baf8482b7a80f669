/** A run of stamps without a value. */
export interface Gap {
  readonly from: number;
  readonly length: number;
}

/**
 * Fill the gaps of a series in place, where that is honest, and tell of all of them.
 *
 * - Up to `straight` steps: a straight line between the neighbours (at the open end of a series that
 *   does not close on itself: the neighbour held).
 * - Longer, up to `longest` steps: the mean of the same time of day on the nearest days before and
 *   after that have it, so that the day keeps its shape.
 * - Still longer, or with no such day: left empty.
 *
 * @param values  series, NaN where empty
 * @param perDay  steps a day; a whole number, or gaps longer than `straight` stay empty
 * @param periodic  whether the end meets the start
 */
export function fillGaps(
  values: Float64Array,
  limits: { readonly straight: number; readonly longest: number },
  perDay: number,
  periodic: boolean,
): { filled: Gap[]; left: Gap[] } {
  const filled: Gap[] = [];
  const left: Gap[] = [];
  const original = Float64Array.from(values);
  for (const gap of gapsOf(values, periodic)) {
    let done = gap.length < values.length;
    if (gap.length <= limits.straight) bridge(values, gap, periodic);
    else if (gap.length <= limits.longest) done = borrow(values, original, gap, perDay, periodic);
    else done = false;
    (done ? filled : left).push(gap);
  }
  return { filled, left };
}

/** Runs of NaN; in a periodic series a run over the end is one run that starts before the end. */
export function gapsOf(values: Float64Array, periodic: boolean): Gap[] {
  const gaps: Gap[] = [];
  const n = values.length;
  for (let k = 0; k < n; k++) {
    if (!Number.isNaN(values[k]!)) continue;
    const from = k;
    while (k < n && Number.isNaN(values[k]!)) k++;
    gaps.push({ from, length: k - from });
  }
  const first = gaps[0];
  const last = gaps.at(-1);
  if (!periodic || gaps.length < 2 || first!.from > 0 || last!.from + last!.length < n) return gaps;
  return [...gaps.slice(1, -1), { from: last!.from, length: last!.length + first!.length }];
}

function bridge(values: Float64Array, gap: Gap, periodic: boolean) {
  const n = values.length;
  const at = (k: number) => (periodic ? values[(k + n) % n]! : (values[k] ?? Number.NaN));
  const before = at(gap.from - 1);
  const after = at(gap.from + gap.length);
  const left = Number.isNaN(before) ? after : before;
  const right = Number.isNaN(after) ? before : after;
  for (let k = 0; k < gap.length; k++) {
    const share = (k + 1) / (gap.length + 1);
    values[(gap.from + k) % n] = left + share * (right - left);
  }
}

function borrow(
  values: Float64Array,
  original: Float64Array,
  gap: Gap,
  perDay: number,
  periodic: boolean,
): boolean {
  const n = values.length;
  const found = new Float64Array(gap.length);
  for (let k = 0; k < gap.length; k++) {
    const before = nearestDay(original, gap.from + k, -perDay, periodic);
    const after = nearestDay(original, gap.from + k, perDay, periodic);
    if (Number.isNaN(before) && Number.isNaN(after)) return false;
    if (Number.isNaN(before)) found[k] = after;
    else found[k] = Number.isNaN(after) ? before : (before + after) / 2;
  }
  for (let k = 0; k < gap.length; k++) values[(gap.from + k) % n] = found[k]!;
  return true;
}

/** The value some whole days away, at most DAYS_AWAY; NaN where there is none. */
function nearestDay(values: Float64Array, at: number, stride: number, periodic: boolean): number {
  const n = values.length;
  if (!Number.isInteger(stride)) return Number.NaN;
  for (let days = 1; days <= DAYS_AWAY; days++) {
    const k = at + days * stride;
    const value = values[periodic ? ((k % n) + n) % n : k];
    if (value !== undefined && !Number.isNaN(value)) return value;
  }
  return Number.NaN;
}

const DAYS_AWAY = 3;
