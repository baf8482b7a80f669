import type { OutdoorSeries } from '../../home/home.ts';
import { nearestHint } from '../../units/nearest-name.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import { INSTANT_WORDS, instantOf } from './instant-text.ts';

/**
 * Levels outdoors by time from a column of a CSV file: a header with `time` first, then rows.
 *
 * Times are ISO 8601 with their distance from UTC, evenly spaced; each level is the mean of the time
 * until the next.
 *
 * @param unit  that levels are in, for what is wrong with them
 * @throws InputProblems with everything that is wrong, each with its line
 */
export function outdoorSeries(
  text: string,
  file: string,
  column: string,
  unit: string,
): OutdoorSeries {
  const problems: Problem[] = [];
  const say: Say = (line, where, expected, got, hint = '') =>
    problems.push({ file, line, column: 1, where, expected, got, hint });
  const [head = '', ...rows] = text.replace(/^\ufeff/, '').split(/\r?\n/);
  const names = cellsOf(head);
  const at = names.indexOf(column, 1);
  if (names[0]?.toLowerCase() !== 'time') {
    say(1, 'header', 'time as the first column', shown(names[0]));
  } else if (at < 0) {
    const hint = nearestHint(column, names.slice(1));
    say(1, 'header', `a column called ${column}`, names.slice(1).join(', ') || 'none', hint);
  }
  const times: number[] = [];
  const levels: number[] = [];
  if (problems.length === 0) {
    rows.forEach((row, k) => {
      if (row.trim() !== '') readRow(cellsOf(row), k + 2, { at, column, unit, times, levels, say });
    });
    if (times.length < 2 && problems.length === 0) {
      say(0, '', 'at least two levels', `${times.length}`);
    }
  }
  if (problems.length > 0) throw new InputProblems(problems.slice(0, MOST_SAID));
  const [start, second] = times as [number, number];
  return { start, step: second - start, values: Float64Array.from(levels) };
}

type Say = (line: number, where: string, expected: string, got: string, hint?: string) => void;

interface Reading {
  readonly at: number;
  readonly column: string;
  readonly unit: string;
  readonly times: number[];
  readonly levels: number[];
  readonly say: Say;
}

function readRow(
  cells: readonly string[],
  line: number,
  { at, column, unit, times, levels, say }: Reading,
): void {
  const time = instantOf(cells[0]);
  const level = cells[at] === undefined || cells[at] === '' ? Number.NaN : Number(cells[at]);
  const before = times.at(-1);
  const step = times.length > 1 ? times[1]! - times[0]! : null;
  if (Number.isNaN(time)) say(line, 'time', INSTANT_WORDS, shown(cells[0]));
  else if (!(level >= 0 && level <= MOST)) {
    say(line, column, `a level in ${unit} of 0 or more`, shown(cells[at]));
  } else if (before !== undefined && time <= before) {
    say(line, 'time', 'a later time than the row before', shown(cells[0]));
  } else if (step !== null && before !== undefined && time - before !== step) {
    const expected = `${step / 60} min after the row before, as at the start`;
    say(line, 'time', expected, `${(time - before) / 60} min`);
  }
  times.push(time);
  levels.push(level);
}

const cellsOf = (row: string): string[] => row.split(',').map((cell) => cell.trim());
const shown = (cell: string | undefined): string => (cell ? JSON.stringify(cell) : 'nothing');

const MOST_SAID = 20;
const MOST = 1e9;
