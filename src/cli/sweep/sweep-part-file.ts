import { csvFields } from '../../report/csv-fields.ts';
import { typedText } from '../../report/csv-line.ts';
import { FIRST } from '../../report/sweep/sweep-csv.ts';
import type { SweepResult } from '../../report/sweep/sweep-result.ts';
import type { Bargain } from '../../studies/sweep/frontier.ts';
import { bargainOf } from '../../studies/sweep/frontier.ts';
import { refused } from '../files/file-trouble.ts';
import type { LineFile, LinePlace } from '../files/line-file.ts';

/** A run with figures, as the summary of a sweep names it. */
export interface NamedBargain extends Bargain {
  /** Home of a stock; empty for none. */
  readonly home: string;
  readonly plan: string;
  readonly values: Readonly<Record<string, number>>;
}

/** A run in a finished file. */
export interface RunInFile {
  /** All lines of it. */
  place: LinePlace;
  /** Null where the run could not be made. */
  bargain: NamedBargain | null;
}

/** What a finished file of a sweep, or of a part of one, holds. */
export interface SweepFile {
  readonly sweep: string;
  readonly of: number;
  /** Header of CSV; null for NDJSON. */
  readonly names: readonly string[] | null;
  readonly runs: ReadonlyMap<number, RunInFile>;
  readonly currency: string;
}

/**
 * Read what a finished file holds, without keeping its lines.
 *
 * @throws InputProblems where it is none, or breaks off
 */
export async function readSweepFile(
  lines: LineFile,
  file: string,
  format: 'csv' | 'ndjson',
): Promise<SweepFile> {
  const found = format === 'csv' ? csvReader(file) : ndjsonReader(file);
  const rest = await lines.scan(found.take);
  if (rest !== '') throw refused(file, 'whole lines', 'one that breaks off at the end');
  const { sweep, of, names, runs, currency } = found.result();
  if (runs.size === 0) throw notASweep(file);
  return { sweep, of, names, runs, currency };
}

function ndjsonReader(file: string) {
  const runs = new Map<number, RunInFile>();
  let head = { sweep: '', of: 0, currency: '' };
  return {
    take: (line: string, place: LinePlace): void => {
      const { sweep, run, of, home, plan, values, figures } = resultIn(line, file);
      if (runs.size > 0 && sweep !== head.sweep) throw mixed(file);
      if (runs.has(run)) throw doubled(file, run);
      const bargain =
        figures === null ? null : { run, home: home ?? '', plan, values, ...bargainOf(figures) };
      runs.set(run, { place, bargain });
      head = { sweep, of, currency: figures?.money.currency ?? head.currency };
    },
    result: () => ({ ...head, names: null, runs }),
  };
}

function resultIn(line: string, file: string): SweepResult {
  try {
    const value = JSON.parse(line) as Partial<SweepResult> | null;
    const { sweep, run, of, values, figures } = value ?? {};
    if (typeof sweep === 'string' && typeof run === 'number' && typeof of === 'number') {
      if (typeof values === 'object' && figures !== undefined) return value as SweepResult;
    }
  } catch {
    // Said below.
  }
  throw notASweep(file);
}

function csvReader(file: string) {
  const runs = new Map<number, RunInFile>();
  let names: readonly string[] = [];
  let head = { sweep: '', of: 0, currency: '' };

  function record(text: string, place: LinePlace): void {
    const fields = csvFields(text);
    if (names.length === 0) {
      if (FIRST.some((name, k) => fields[k] !== name)) throw notASweep(file);
      names = fields;
      return;
    }
    if (fields.length !== names.length) throw notASweep(file);
    const at = (name: string) => fields[names.indexOf(name)] ?? '';
    const [sweep = '', number, of, home = '', plan = ''] = fields;
    if (runs.size > 0 && sweep !== head.sweep) throw mixed(file);
    const currency = at('money.currency') || head.currency;
    head = { sweep, of: Number(of), currency };
    const run = Number(number);
    if (at('room') === '') {
      if (runs.has(run)) throw doubled(file, run);
      const money = at('money.total_per_year');
      const pointers = names.slice(FIRST.length, names.indexOf('problem'));
      const values = Object.fromEntries(pointers.map((name) => [name, Number(at(name))]));
      const named = { home: typedText(home), plan: typedText(plan) };
      const bargain = { run, ...named, values, money: Number(money), hours: 0 };
      runs.set(run, { place, bargain: money === '' ? null : bargain });
      return;
    }
    const known = runs.get(run);
    if (known === undefined || known.place.at + known.place.length + 1 !== place.at) {
      throw doubled(file, run);
    }
    known.place = { at: known.place.at, length: place.at + place.length - known.place.at };
    const { bargain } = known;
    if (bargain === null) return;
    const hours = OUTSIDE.reduce((sum, name) => sum + Number(at(name)), bargain.hours);
    known.bargain = { ...bargain, hours };
  }

  return { take: record, result: () => ({ ...head, names, runs }) };
}

const notASweep = (file: string) =>
  refused(file, 'a file that sweep has written', 'another, or one that was changed');
const mixed = (file: string) => refused(file, 'runs of one sweep', 'runs of more than one');
const doubled = (file: string, run: number) => refused(file, 'each run once', `run ${run} twice`);

/** What `hoursOutsideBands` adds up, as columns are called. */
const OUTSIDE: readonly string[] = [
  'outside_band_occupied_hours.temperature_low',
  'outside_band_occupied_hours.temperature_high',
  'outside_band_hours.humidity_high',
  'outside_band_hours.humidity_low',
];
