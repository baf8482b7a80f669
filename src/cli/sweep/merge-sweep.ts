import { csvFields } from '../../report/csv-fields.ts';
import { csvLine } from '../../report/csv-line.ts';
import { inOrder } from '../../report/sweep/sweep-csv.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import type { LineFile } from '../files/line-file.ts';
import type { RunInFile, SweepFile } from './sweep-part-file.ts';

/** A finished part of a sweep, and its lines. */
export interface OpenPart {
  readonly file: string;
  readonly lines: LineFile;
  readonly holds: SweepFile;
}

/**
 * Refuse parts that are not of one sweep, or of which runs are missing or doubled.
 *
 * @throws InputProblems with everything that is wrong
 */
export function checkParts(parts: readonly OpenPart[], output: string): void {
  const [first] = parts;
  const problems: Problem[] = [];
  const say = (file: string, expected: string, got: string) =>
    void problems.push({ file, line: 0, column: 0, where: '', expected, got, hint: '' });
  const foreign = parts.filter(({ holds }) => holds.sweep !== first!.holds.sweep);
  for (const { file } of foreign) {
    const why = 'one of another: scenario, weather, values or program differ';
    say(file, `a part of the sweep in ${first!.file}`, why);
  }
  if (foreign.length > 0) throw new InputProblems(problems);

  const from = new Map<number, string>();
  for (const { file, holds } of parts) {
    const twice = [...holds.runs.keys()].filter((run) => from.has(run));
    for (const run of holds.runs.keys()) from.set(run, from.get(run) ?? file);
    if (twice.length === 0) continue;
    const there = [...new Set(twice.map((run) => from.get(run)))].join(' and ');
    say(file, 'each run in one part only', `${runWords(twice)}, which ${there} has too`);
  }
  const { of } = first!.holds;
  const missing = Array.from({ length: of }, (_, k) => k + 1).filter((run) => !from.has(run));
  if (missing.length > 0)
    say(output, `all ${of} runs of the sweep`, `none for ${runWords(missing)}`);
  if (problems.length > 0) throw new InputProblems(problems);
}

/** All runs of some parts, in order, as one file in pieces. */
export async function* mergedPieces(parts: readonly OpenPart[]): AsyncIterable<string> {
  const [first] = parts;
  const runs = parts.flatMap((part) =>
    [...part.holds.runs].map(([run, { place }]) => ({ run, place, part })),
  );
  runs.sort((a, b) => a.run - b.run);
  const names = first!.holds.names === null ? null : mergedNames(parts);
  if (names !== null) yield `${csvLine(names)}\n`;
  for (const { place, part } of runs) {
    const text = await part.lines.read(place);
    yield names === null ? `${text}\n` : relaid(text, part.holds.names!, names);
  }
}

/** Runs of some parts, in order. */
export const runsOfParts = (parts: readonly OpenPart[]): RunInFile[] =>
  parts
    .flatMap(({ holds }) => [...holds.runs])
    .sort(([a], [b]) => a - b)
    .map(([, run]) => run);

function mergedNames(parts: readonly OpenPart[]): string[] {
  const [first] = parts;
  const own = first!.holds.names!.indexOf('problem') + 1;
  const figures = new Set(parts.flatMap(({ holds }) => holds.names!.slice(own)));
  return [...first!.holds.names!.slice(0, own), ...inOrder(figures)];
}

/** Rows of a run under other columns. */
function relaid(text: string, from: readonly string[], to: readonly string[]): string {
  if (from.length === to.length) return `${text}\n`; // in one order, whatever the part
  return text
    .split('\n')
    .map((record) => {
      const fields = csvFields(record);
      const cells = new Map(from.map((name, k) => [name, fields[k]!]));
      return `${csvLine(to.map((name) => cells.get(name) ?? ''))}\n`;
    })
    .join('');
}

function runWords(runs: readonly number[]): string {
  const shown = runs.slice(0, MOST);
  const more = runs.length - shown.length;
  const rest = more === 0 ? '' : ` and ${more} more`;
  return `${runs.length === 1 ? 'run' : 'runs'} ${shown.join(', ')}${rest}`;
}

const MOST = 8;
