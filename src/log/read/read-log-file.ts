import { binarySign } from '../../units/binary-sign.ts';
import type { Problem } from '../../units/problem.ts';
import type { LoggedSeries } from '../log.ts';
import { factsOf } from '../quantities.ts';
import { dateOrder } from './date-order.ts';
import { finishColumn } from './finish-column.ts';
import { instantsOf } from './instants-of.ts';
import { keyOf } from './join-series.ts';
import type { LogOptions, NamedReading, UnderstoodColumn, UnderstoodFile } from './log-options.ts';
import { type LogProblems, logProblems } from './log-problems.ts';
import { nameMeaning, unitInName } from './name-meaning.ts';
import type { RawRows } from './raw-rows.ts';
import { type LogRows, readLogRows } from './read-log-rows.ts';
import { sniffTable, type TableLayout } from './sniff-table.ts';
import type { TimeForm } from './time-text.ts';

/** What one file of a log holds. */
export interface LogFile {
  readonly series: readonly LoggedSeries[];
  readonly understood: UnderstoodFile;
  /** Columns of a wide file, names of a long one. */
  readonly names: readonly string[];
}

/** Read one file; null, with problems, where it cannot be used. */
export function readLogFile(
  written: string,
  file: string,
  options: LogOptions,
  problems: Problem[],
): LogFile | null {
  const text = withLineFeeds(written);
  const layout = layoutOf(text, file, problems);
  if (layout === null) return null;
  const found = logProblems(file, text, layout.separator);
  const form = layout.epoch ?? options.dates ?? dateOrder(text, layout);
  if (form === null) {
    found.at(layout.head + 1, layout.timeCells[0]!, 'order', AMBIGUOUS(layout));
    problems.push(...found.all());
    return null;
  }
  const wide = wideColumns(layout, options, file);
  const cells = wide.wanted.map(({ cell }) => cell);
  const rows = readLogRows(text, layout, form, cells, found);
  const read = finishAll(layout, rows, wide, options, file, found);
  const wrong = found.all();
  problems.push(...wrong);
  if (wrong.length > 0) return null;
  const long = layout.long !== null;
  return {
    series: read.series,
    names: long ? [...rows.groups.keys()] : layout.names,
    understood: {
      file,
      form: long ? 'long' : 'wide',
      separator: SEPARATORS[layout.separator] ?? layout.separator,
      decimal: layout.decimalComma ? 'comma' : 'point',
      head: layout.head,
      rows: rows.rows,
      time: timeWords(layout, form),
      zone: read.zone,
      columns: read.columns,
      leftOut: [...wide.leftOut, ...read.leftOut],
      notes: read.notes,
    },
  };
}

function layoutOf(text: string, file: string, problems: Problem[]): TableLayout | null {
  const sign = binarySign(text);
  const whole = { file, line: 0, column: 0, where: '' };
  if (sign !== null || text.trim() === '') {
    const got = sign ?? 'nothing: the file is empty';
    const hint = 'unpack archives and export spreadsheets as CSV first';
    problems.push({
      ...whole,
      expected: 'the text of a log',
      got,
      hint: sign === null ? '' : hint,
    });
    return null;
  }
  const layout = sniffTable(text);
  if (layout === null) {
    const first = text.slice(0, text.indexOf('\n') >>> 0).slice(0, 60);
    const got = `lines such as "${first}"`;
    const expected = 'rows of a time and readings, with comma, semicolon, tab or bar between';
    problems.push({ ...whole, expected, got, hint: TIMES_HINT });
  }
  return layout;
}

/** Columns of a wide file that are wanted, and what they are. */
interface WideColumns {
  readonly wanted: readonly { readonly cell: number; readonly what: NamedReading }[];
  readonly leftOut: UnderstoodFile['leftOut'];
}

function wideColumns(layout: TableLayout, options: LogOptions, file: string): WideColumns {
  if (layout.long !== null) return { wanted: [], leftOut: [] };
  const wanted: { cell: number; what: NamedReading }[] = [];
  const leftOut: { name: string; why: string }[] = [];
  layout.names.forEach((name, cell) => {
    if (layout.timeCells.includes(cell)) return;
    const what = whatIs(name, options, file);
    if ('leftOut' in what) leftOut.push({ name, why: what.leftOut });
    else wanted.push({ cell, what });
  });
  return { wanted, leftOut };
}

function whatIs(name: string, { readings, rooms, devices }: LogOptions, file: string) {
  if (Object.hasOwn(readings, name)) {
    const said = readings[name]!;
    if (said === 'leave out') return { leftOut: 'the scenario leaves it out' };
    return said.unit === null ? { ...said, unit: unitInName(name) } : said;
  }
  return nameMeaning(name, { rooms, devices }, stemOf(file));
}

function finishAll(
  layout: TableLayout,
  rows: LogRows,
  wide: WideColumns,
  options: LogOptions,
  file: string,
  problems: LogProblems,
) {
  const series: LoggedSeries[] = [];
  const columns: UnderstoodColumn[] = [];
  const leftOut: { name: string; why: string }[] = [];
  const notes = new Set<string>();
  const taken = new Map<string, string>();
  let zone = '';
  for (const [group, raw] of rows.groups) {
    const wanted =
      layout.long === null ? wide.wanted : longColumn(group, layout.long.value, options, file);
    if ('leftOut' in wanted) {
      leftOut.push({ name: group, why: wanted.leftOut });
      continue;
    }
    if (raw.count === 0) continue;
    const at = instantsOf(raw, rows.inUtc, layout, options, group, problems);
    if (at === null) continue;
    zone = at.zone;
    for (const note of at.notes) notes.add(note);
    wanted.forEach(({ cell, what }, k) => {
      const name = layout.long === null ? layout.names[cell]! : group;
      const key = keyOf(what);
      const twin = taken.get(key);
      if (twin !== undefined) {
        problems.whole(twoForOne(twin, name, whereWords(what), what.quantity));
        return;
      }
      taken.set(key, name);
      const asked = Object.hasOwn(options.readings, name);
      const ofScenario = options.own.find((one) => one.name === what.quantity);
      const facts = ofScenario ?? factsOf(what.quantity)!;
      const said = what.unit ?? rows.units.get(group) ?? null;
      const done = finishColumn(
        raw,
        k,
        at.times,
        at.rows,
        facts,
        said,
        { name, cell, asked },
        problems,
      );
      if (done !== null && 'leftOut' in done) {
        leftOut.push({ name, why: done.leftOut });
        return;
      }
      if (done === null || done.times.length === 0) {
        leftOut.push({ name, why: 'it holds no reading' });
        return;
      }
      if (raw.unread > 0) notes.add(unreadNote(name, raw));
      if (done.beyond > 0) notes.add(beyondNote(name, done.beyond, done.firstBeyond));
      const { quantity, place, room, device } = what;
      const { times, values, reading, unit } = done;
      const from = `${file}, ${name}`;
      series.push({ quantity, place, room, device, reading, times, values, from });
      columns.push({ name, quantity, where: whereWords(what), unit: unit.unit, unitBy: unit.by });
    });
  }
  return { series, columns, leftOut, notes: [...notes], zone };
}

function longColumn(name: string, cell: number, options: LogOptions, file: string) {
  const what = whatIs(name, options, file);
  return 'leftOut' in what ? what : [{ cell, what }];
}

/** Where a reading was taken, in words. */
function whereWords({
  place,
  room,
  device,
}: Pick<NamedReading, 'place' | 'room' | 'device'>): string {
  return device ?? room ?? (place === 'outdoors' ? 'outdoors' : 'whole home');
}

function twoForOne(first: string, second: string, where: string, quantity: string) {
  return {
    where: 'columns and names',
    expected: `one for the ${quantity} of ${where}`,
    got: `"${first}" and "${second}"`,
    hint: 'say under "log: readings:" which room each is of, or leave one out with "leave out"',
  };
}

const beyondNote = (name: string, count: number, first: string): string =>
  `${count} ${count === 1 ? 'reading' : 'readings'} of "${name}" cannot be, such as ${first}, and ${count === 1 ? 'was' : 'were'} left out.`;

const unreadNote = (name: string, { unread, firstUnread }: RawRows): string =>
  `${unread} ${unread === 1 ? 'reading' : 'readings'} of "${name}" ${unread === 1 ? 'is' : 'are'} no number and no state that is known, such as "${firstUnread}", and ${unread === 1 ? 'was' : 'were'} left out.`;

/** A file's name without folders and ending. */
function stemOf(file: string): string {
  const base = file.replace(/^.*[\\/]/, '').replace(/\.[^.]*$/, '');
  return base.replaceAll(/[^\p{L}\p{N}]+/gu, ' ').trim() || 'log';
}

/** Line ends of old spreadsheets, a carriage return alone, become line feeds. */
function withLineFeeds(text: string): string {
  const body = text.charCodeAt(0) === BYTE_ORDER_MARK ? text.slice(1) : text;
  return body.includes('\r') && !body.includes('\n') ? body.replaceAll('\r', '\n') : body;
}

function timeWords({ names, timeCells }: TableLayout, form: TimeForm): string {
  const columns = timeCells.map((cell) => `"${names[cell]}"`).join(' and ');
  return `${columns}, ${FORMS[form]}`;
}

const AMBIGUOUS = ({ names, timeCells }: TableLayout) => ({
  where: names[timeCells[0]!]!,
  expected: 'dates of which it is plain whether the day or the month comes first',
  got: 'numbers up to 12 in both places of every row',
  hint: 'say it: --dates day-first or --dates month-first, or "dates: day first" under "log:" of the scenario',
});

const FORMS: Readonly<Record<TimeForm, string>> = {
  'day first': 'day first',
  'month first': 'month first',
  'year first': 'year first',
  'epoch s': 'seconds since 1970',
  'epoch ms': 'milliseconds since 1970',
};
const SEPARATORS: Readonly<Record<string, string>> = {
  ',': 'comma',
  ';': 'semicolon',
  '\t': 'tab',
  '|': 'bar',
};
const TIMES_HINT =
  'times such as 2025-01-31 05:00, 31.01.2025 05:00 or seconds since 1970 are known';
const BYTE_ORDER_MARK = 0xfeff;
