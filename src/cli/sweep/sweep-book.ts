import { csvLine } from '../../report/csv-line.ts';
import { createSweepColumns, sweepCsvLines } from '../../report/sweep/sweep-csv.ts';
import type { SweepResult } from '../../report/sweep/sweep-result.ts';
import { bargainOf } from '../../studies/sweep/frontier.ts';
import { InputProblems } from '../../units/problem.ts';
import { refused } from '../files/file-trouble.ts';
import type { LineFile, LinePlace } from '../files/line-file.ts';
import type { NamedBargain } from './sweep-part-file.ts';

/** Which part of which sweep a file holds. */
export interface SweepPart {
  /** Fingerprint of everything that decides its figures. */
  readonly sweep: string;
  /** Runs of the whole sweep. */
  readonly of: number;
  /** Part and how many there are; parts count from 1. */
  readonly shard: readonly [part: number, parts: number];
}

/** Results of a sweep as they come, kept in a file of lines until all are there. */
export interface SweepBook {
  has(run: number): boolean;
  add(result: SweepResult): Promise<void>;
  /** Runs kept so far. */
  count(): number;
  /** The finished file in pieces, runs in order. */
  pieces(): AsyncIterable<string>;
  /** What each run that has figures comes to. */
  readonly bargains: readonly NamedBargain[];
  /** Currency of their money; empty where none has figures. */
  currency(): string;
  /** Results without figures. */
  readonly troubles: readonly SweepResult[];
}

/**
 * Keep the results of a part in a file of lines. What an earlier call left there goes on; a line that
 * it could not finish is dropped.
 *
 * @param file  its name, for messages
 * @param csv  the pointers of the columns where the finished file is CSV; null for NDJSON
 * @throws InputProblems where the lines are of another sweep, or are none
 */
export async function openSweepBook(
  lines: LineFile,
  file: string,
  part: SweepPart,
  csv: readonly string[] | null,
): Promise<SweepBook> {
  const places = new Map<number, LinePlace>();
  const columns = csv === null ? null : createSweepColumns(csv);
  const bargains: NamedBargain[] = [];
  const troubles: SweepResult[] = [];
  let currency = '';
  const take = (result: SweepResult, place: LinePlace): void => {
    places.set(result.run, place);
    columns?.add(result);
    if (result.figures === null) troubles.push(result);
    else {
      const { run, home, plan, values } = result;
      bargains.push({ run, home: home ?? '', plan, values, ...bargainOf(result.figures) });
      currency = result.figures.money.currency;
    }
  };

  let seen = 0;
  await lines.scan((line, place) => {
    seen++;
    const value = parsed(line, file, seen);
    if (seen === 1) requireSame(value as unknown as SweepPart, part, file);
    else take(value as unknown as SweepResult, place);
  });
  await lines.dropRest();
  if (seen === 0) await lines.append(JSON.stringify(part));

  async function* pieces(): AsyncIterable<string> {
    const names = columns?.names() ?? [];
    if (columns !== null) yield `${csvLine(names)}\n`;
    for (const run of [...places.keys()].sort((a, b) => a - b)) {
      const line = await lines.read(places.get(run)!);
      yield columns === null ? `${line}\n` : sweepCsvLines(JSON.parse(line), names);
    }
  }

  return {
    has: (run) => places.has(run),
    add: async (result) => take(result, await lines.append(JSON.stringify(result))),
    count: () => places.size,
    pieces,
    bargains,
    currency: () => currency,
    troubles,
  };
}

function parsed(line: string, file: string, number: number): object {
  try {
    const value: unknown = JSON.parse(line);
    if (typeof value === 'object' && value !== null) return value;
  } catch {
    // Said below.
  }
  const { problems } = refused(file, 'a line of an unfinished sweep', 'something else');
  throw new InputProblems(problems.map((problem) => ({ ...problem, line: number, column: 1 })));
}

function requireSame(found: SweepPart, part: SweepPart, file: string): void {
  if (JSON.stringify(found) === JSON.stringify(part)) return;
  const got =
    found.sweep === part.sweep
      ? `shard ${found.shard.join('/')} of it`
      : 'what is left of another: scenario, weather, values or program have changed since';
  throw refused(
    file,
    `the unfinished shard ${part.shard.join('/')} of this sweep`,
    got,
    'remove it to begin anew',
  );
}
