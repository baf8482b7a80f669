import { isoTime } from '../../units/iso-time.ts';
import type { Problem } from '../../units/problem.ts';
import type { RawSeries } from '../raw-series.ts';

/** An even grid of stamps, and which row stands on each. */
export interface TimeGrid {
  /** First stamp. [s UTC] */
  readonly start: number;
  /** [s] */
  readonly step: number;
  readonly count: number;
  /** Row of each stamp, -1 where the file has none. */
  readonly row: Int32Array;
}

/**
 * The even grid that the rows stand on, with holes where rows are missing.
 *
 * @returns null where the times make no grid; then problems say why
 */
export function checkTimes(raw: RawSeries, problems: Problem[]): TimeGrid | null {
  const { time, table } = raw;
  const before = problems.length;
  const complain = (line: number, expected: string, got: string, hint = '') =>
    problems.push({ file: table.file, line, column: 1, where: 'time', expected, got, hint });
  if (time.length < 2) {
    complain(0, 'at least two rows', `${time.length}`);
    return null;
  }
  const step = commonStep(time);
  if (step === 0 && time[1]! < time[0]!) {
    const [first, second] = [isoTime(time[0]!), isoTime(time[1]!)];
    complain(raw.line[1]!, 'rows with the earliest first', `${second} after ${first}`, BACK_HINT);
    return null;
  }
  if (step < SHORTEST_STEP || step > LONGEST_STEP) {
    complain(raw.line[1]!, 'rows from 5 minutes to 3 hours apart', duration(step), stepHint(step));
    return null;
  }
  for (let k = 1; k < time.length; k++) {
    const apart = time[k]! - time[k - 1]!;
    if (apart === step) continue;
    const line = raw.line[k]!;
    const next = isoTime(time[k - 1]! + step);
    if (apart === 0) complain(line, next, `${isoTime(time[k]!)} a second time`, DST_HINT);
    else if (apart < 0) complain(line, next, `${isoTime(time[k]!)}, which is earlier`, BACK_HINT);
    else if (apart > YEAR) complain(line, next, `${isoTime(time[k]!)}, more than a year later`);
    else if (apart % step !== 0) {
      const got = `${isoTime(time[k]!)}, ${duration(apart)} after the row before`;
      complain(line, next, got, `the rows are ${duration(step)} apart elsewhere`);
    }
  }
  const start = time[0]!;
  const count = (time.at(-1)! - start) / step + 1;
  if (raw.typical && problems.length === before && count * step !== YEAR) {
    const days = Math.round(((count * step) / 86_400) * 100) / 100;
    complain(raw.line.at(-1)!, 'a typical year of 365 days', `${days} days`, TYPICAL_HINT);
  }
  if (problems.length > before) return null;
  const row = new Int32Array(count).fill(-1);
  for (let k = 0; k < time.length; k++) row[(time[k]! - start) / step] = k;
  return { start, step, count, row };
}

/** The spacing that most rows have, of the positive ones; 0 where there is none. [s] */
function commonStep(time: readonly number[]): number {
  const seen = new Map<number, number>();
  for (let k = 1; k < time.length; k++) {
    const apart = time[k]! - time[k - 1]!;
    if (apart > 0) seen.set(apart, (seen.get(apart) ?? 0) + 1);
  }
  let best = 0;
  for (const [apart, times] of seen) {
    const most = seen.get(best) ?? 0;
    if (times > most || (times === most && apart < best)) best = apart;
  }
  return best;
}

/** A length of time in words. */
export function duration(seconds: number): string {
  if (seconds % 86_400 === 0 && seconds >= 86_400) return count(seconds / 86_400, 'day');
  if (seconds % 3600 === 0 && seconds >= 3600) return count(seconds / 3600, 'hour');
  if (seconds % 60 === 0) return count(seconds / 60, 'minute');
  return count(seconds, 'second');
}

function stepHint(step: number): string {
  if (step === 60) return 'if the second row means 01:00, its hours stand in the place of minutes';
  return step > LONGEST_STEP ? 'daily values cannot drive a simulation by the hour' : '';
}

const count = (n: number, word: string): string => `${n} ${word}${n === 1 ? '' : 's'}`;

const SHORTEST_STEP = 300;
const LONGEST_STEP = 3 * 3600;
const YEAR = 365 * 86_400;
const DST_HINT = 'where summer time ends, local clocks repeat an hour: write UTC';
const BACK_HINT = 'rows must go forward in time';
const TYPICAL_HINT = 'leave "typical" away for measured weather of any length';
