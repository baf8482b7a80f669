import type { ReadingKind } from '../log.ts';
import type { LoggedQuantityFacts } from '../quantities.ts';
import type { LogProblems } from './log-problems.ts';
import { meterMeans } from './meter-means.ts';
import type { RawRows } from './raw-rows.ts';
import { UNAVAILABLE } from './raw-rows.ts';
import { type Spread, type UnitTaken, unitOf } from './unit-of.ts';

/** Readings of one column in SI units, in the order of time. */
export interface FinishedColumn {
  readonly times: Float64Array;
  readonly values: Float64Array;
  readonly reading: ReadingKind;
  readonly unit: UnitTaken;
  /** Numbers that were left out because no such reading is possible, and the first of them in words. */
  readonly beyond: number;
  readonly firstBeyond: string;
}

/**
 * A column from the rows that count: numbers in the unit of the quantity, those that cannot be left
 * out where they are few, refused where they are many.
 *
 * @param times  instants of the rows that count [s UTC]
 * @param rows   their numbers; null for all as they stand
 * @returns null where the column holds no number at all or was refused
 */
export function finishColumn(
  raw: RawRows,
  column: number,
  times: Float64Array,
  rows: Int32Array | null,
  facts: LoggedQuantityFacts,
  said: string | null,
  place: { readonly name: string; readonly cell: number; readonly asked: boolean },
  problems: LogProblems,
): FinishedColumn | { readonly leftOut: string } | null {
  const all = raw.values[column]!;
  const number = (k: number) => all[rows === null ? k : rows[k]!]!;
  const line = (k: number) => raw.line[rows === null ? k : rows[k]!]!;
  const spread = spreadOf(times.length, number);
  if (spread === null) return null;
  const unit = unitOf(facts, said, spread);
  if ('hint' in unit) {
    if (unit.foreign && !place.asked)
      return { leftOut: `expected ${unit.expected}, got ${unit.got}` };
    problems.at(line(firstNumber(times.length, number)), place.cell, `unit ${place.name}`, {
      where: place.name,
      expected: unit.expected,
      got: unit.got,
      hint: unit.hint,
    });
    return null;
  }
  const kept = keepPossible(times, number, unit, facts);
  if (kept.beyond > Math.max(FEW, spread.count * FEW_OF)) {
    const [low, high] = facts.range;
    problems.at(line(kept.firstRow), place.cell, `range ${place.name}`, {
      where: place.name,
      expected: `${low} to ${high} ${facts.unit}`,
      got: `${short(kept.firstBeyond)} and ${kept.beyond - 1} more beyond`,
      hint: 'say its unit, or leave the column out',
    });
    return null;
  }
  const beyond = kept.beyond;
  const firstBeyond = short(kept.firstBeyond);
  if (!unit.isEnergy) {
    return {
      times: kept.times,
      values: kept.values,
      reading: facts.reading,
      unit,
      beyond,
      firstBeyond,
    };
  }
  const means = finishMeter(kept, unit, facts);
  if ('many' in means) {
    const [low, high] = facts.range;
    problems.at(line(firstNumber(times.length, number)), place.cell, `range ${place.name}`, {
      where: place.name,
      expected: `a meter whose mean between readings is ${low} to ${high} ${facts.unit}`,
      got: means.many,
      hint: 'say its unit, or leave the column out',
    });
    return null;
  }
  return means;
}

/** Means of a meter, those that cannot be left out where they are few; where they are many, how many. */
function finishMeter(
  kept: Pick<FinishedColumn, 'times' | 'values'>,
  unit: UnitTaken,
  facts: LoggedQuantityFacts,
): FinishedColumn | { readonly many: string } {
  const { times, values, wrong, firstWrong } = meterMeans(kept.times, kept.values);
  const apart = leaveOutBeyond(values, facts.range);
  if (apart.count > Math.max(FEW, values.length * FEW_OF)) {
    return { many: `${short(apart.first)} and ${apart.count - 1} more beyond` };
  }
  const firstBeyond =
    wrong > 0
      ? `${short(firstWrong / unit.factor)}, which its neighbours belie`
      : `a mean of ${short(apart.first)} ${facts.unit}`;
  return { times, values, reading: 'mean', unit, beyond: apart.count + wrong, firstBeyond };
}

/** Makes means that cannot be unknown, as where a meter failed for a reading. */
function leaveOutBeyond(means: Float64Array, [low, high]: readonly [number, number]) {
  let count = 0;
  let first = Number.NaN;
  for (let k = 0; k < means.length; k++) {
    if (!(means[k]! < low || means[k]! > high)) continue;
    if (count++ === 0) first = means[k]!;
    means[k] = Number.NaN;
  }
  return { count, first };
}

function keepPossible(
  times: Float64Array,
  number: (k: number) => number,
  { factor, offset, isEnergy }: UnitTaken,
  { range, reading, unit }: LoggedQuantityFacts,
) {
  const [low, high] = isEnergy ? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] : range;
  const values = new Float64Array(times.length);
  const keptTimes = new Float64Array(times.length);
  let count = 0;
  let beyond = 0;
  let firstBeyond = Number.NaN;
  let firstRow = 0;
  for (let k = 0; k < times.length; k++) {
    const raw = number(k);
    if (Number.isNaN(raw)) continue;
    let value = raw * factor + offset;
    if (raw === UNAVAILABLE) {
      if (reading !== 'state' && (unit !== 'W' || isEnergy)) continue;
      value = Number.NaN;
    } else if (value < low || value > high) {
      if (beyond++ === 0) {
        firstBeyond = raw;
        firstRow = k;
      }
      continue;
    }
    keptTimes[count] = times[k]!;
    values[count++] = value;
  }
  const whole = count === times.length;
  return {
    times: whole ? times : keptTimes.slice(0, count),
    values: whole ? values : values.slice(0, count),
    ...{ beyond, firstBeyond, firstRow },
  };
}

/** Least, middle and most of some numbers spread over a column; null where it has none. */
function spreadOf(
  rows: number,
  number: (k: number) => number,
): (Spread & { readonly count: number }) | null {
  const found: number[] = [];
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  let count = 0;
  for (let k = 0; k < rows; k++) {
    const value = number(k);
    if (!Number.isFinite(value)) continue;
    if (value < least) least = value;
    if (value > most) most = value;
    if (count++ % Math.ceil(rows / SAMPLE) === 0) found.push(value);
  }
  if (count === 0) return null;
  found.sort((a, b) => a - b);
  return { least, middle: found[found.length >> 1]!, most, count };
}

function firstNumber(rows: number, number: (k: number) => number): number {
  let k = 0;
  while (k < rows && !Number.isFinite(number(k))) k++;
  return k;
}

const short = (value: number): string => String(Math.round(value * 100) / 100);

const SAMPLE = 20_000;
const FEW = 5;
const FEW_OF = 0.02;
