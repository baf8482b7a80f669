import { TYPICAL_YEAR } from '../typical-year.ts';

/** Hours of the typical year, UTC. */
export const HOURS_OF_YEAR = 8760;

/** Straight lines through twelve values, each at the middle of its month, round the year; one an hour. */
export function monthlyCurve(values: readonly number[]): Float64Array {
  const curve = new Float64Array(HOURS_OF_YEAR);
  let month = 11;
  for (let k = 0; k < HOURS_OF_YEAR; k++) {
    if (month === 11 ? k >= MIDDLE[0]! && k < MIDDLE[11]! : k >= MIDDLE[month + 1]!) {
      month = (month + 1) % 12;
    }
    const next = (month + 1) % 12;
    const length = (MIDDLE[next]! - MIDDLE[month]! + HOURS_OF_YEAR) % HOURS_OF_YEAR;
    const into = (k - MIDDLE[month]! + HOURS_OF_YEAR) % HOURS_OF_YEAR;
    curve[k] = values[month]! + (into / length) * (values[next]! - values[month]!);
  }
  return curve;
}

/** Straight lines through a value a day, each at noon UTC, round the year; one an hour. */
export function dailyCurve(values: Float64Array): Float64Array {
  const days = values.length;
  return Float64Array.from({ length: days * 24 }, (_, k) => {
    const at = (k - 12) / 24;
    const day = Math.floor(at);
    const from = values[(day + days) % days]!;
    return from + (at - day) * (values[(day + 1) % days]! - from);
  });
}

/** Mean of each month of an hourly series of the typical year. */
export function monthlyMeans(hourly: Float64Array): number[] {
  const sums = new Array<number>(12).fill(0);
  for (let k = 0; k < HOURS_OF_YEAR; k++) sums[MONTH[k]!]! += hourly[k]!;
  return sums.map((sum, month) => sum / (START[month + 1]! - START[month]!));
}

/**
 * Find twelve values whose series has the monthly means asked for, by correcting them over and over.
 *
 * A correction between the middles of months keeps the series smooth where one step a month would
 * break it at the joints.
 *
 * @param first  where to begin
 * @param make  series from twelve values, by month
 * @param means  what to hold against the targets
 * @param correct  next value from the last, the target, what came out, and the month from 0
 * @returns the series of the last round
 */
export function matchMonths(
  first: readonly number[],
  targets: readonly number[],
  make: (values: readonly number[]) => Float64Array,
  means: (series: Float64Array) => readonly number[],
  correct: (value: number, target: number, got: number, month: number) => number,
): Float64Array {
  let values = first;
  let series = make(values);
  for (let round = 0; round < ROUNDS; round++) {
    const got = means(series);
    values = values.map((value, month) => correct(value, targets[month]!, got[month]!, month));
    series = make(values);
  }
  return series;
}

const START: readonly number[] = Array.from(
  { length: 13 },
  (_, month) => (Date.UTC(TYPICAL_YEAR, month) - Date.UTC(TYPICAL_YEAR, 0)) / 3_600_000,
);
const MIDDLE: readonly number[] = START.slice(0, 12).map(
  (start, month) => (start + START[month + 1]!) / 2,
);
const MONTH = Uint8Array.from({ length: HOURS_OF_YEAR }, (_, k) =>
  START.findIndex((start, month) => k >= start && k < (START[month + 1] ?? 0)),
);
const ROUNDS = 40;
