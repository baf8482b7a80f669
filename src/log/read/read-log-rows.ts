import type { LogProblems } from './log-problems.ts';
import { growRows, type RawRows, rawRows } from './raw-rows.ts';
import { cellNumber } from './read-cells.ts';
import type { TableLayout } from './sniff-table.ts';
import { linesFrom, splitCells } from './split-cells.ts';
import { type TimeForm, timeTextReader } from './time-text.ts';

/** All rows of a file, as written. */
export interface LogRows {
  /** Whether times said their zone, so that they are UTC. */
  readonly inUtc: boolean;
  /** One for a wide file, under ''; one for each name of a long one. */
  readonly groups: ReadonlyMap<string, RawRows>;
  /** Units by name, where a long file says them. */
  readonly units: ReadonlyMap<string, string>;
  readonly rows: number;
}

/** Read every row; what cannot be read becomes a problem. @param cells  cells wanted of a wide file */
export function readLogRows(
  text: string,
  layout: TableLayout,
  form: TimeForm,
  cells: readonly number[],
  problems: LogProblems,
): LogRows {
  const reader = timeTextReader(form);
  const groups = new Map<string, RawRows>();
  const units = new Map<string, string>();
  const { separator, head, headed, timeCells, decimalComma, long } = layout;
  const [first = 0, second = -1] = timeCells;
  const needed = 1 + Math.max(first, second, long?.value ?? Math.min(...cells, first));
  const lines = long === null ? lineCount(text) - head : 64;
  let inUtc: boolean | null = null;
  let rows = 0;
  let n = 0;
  if (long === null) groups.set('', rawRows(cells.length, Math.max(1, lines)));
  for (const line of linesFrom(text)) {
    if (n++ < head || line === '' || line.trim() === '') continue;
    const row = splitCells(line, separator);
    if (row === null) {
      problems.at(n, 0, 'marks', {
        where: 'quotation marks',
        expected: 'marks in pairs',
        got: 'one',
      });
      continue;
    }
    if (row.length < needed) {
      problems.at(n, 0, 'short', {
        ...{ where: '', expected: `at least ${needed} cells`, got: `${row.length}` },
        hint: 'a file that was cut off ends like that: delete the line or fetch it again',
      });
      continue;
    }
    if (headed !== null && row.length > headed && /^\d+$/.test(row.at(-1)!)) {
      problems.at(n, headed, 'long', {
        ...{ where: '', expected: `${headed} cells, as the header has`, got: `${row.length}` },
        hint: separator === ',' ? COMMAS : '',
      });
      continue;
    }
    const written = second < 0 ? row[first]! : `${row[first]} ${row[second]}`;
    const clock = reader.read(written);
    const saysZone = !Number.isNaN(reader.ahead);
    if (Number.isNaN(clock) || (inUtc !== null && inUtc !== saysZone)) {
      const expected = Number.isNaN(clock) ? TIMES[form] : ZONE_ALWAYS;
      const got = written === '' ? 'nothing' : `"${written}"`;
      problems.at(n, first, 'time', { where: layout.names[first]!, expected, got });
      continue;
    }
    inUtc = saysZone;
    rows++;
    const at = saysZone ? clock - reader.ahead : clock;
    if (long !== null) addLong(row, at, n);
    else addWide(row, at, n);
  }
  return { inUtc: inUtc === true, groups, units, rows };

  function addWide(row: readonly string[], at: number, line: number): void {
    const group = groups.get('')!;
    const k = group.count++;
    group.clock[k] = at;
    group.line[k] = line;
    for (let c = 0; c < cells.length; c++) {
      group.values[c]![k] = numberOf(row[cells[c]!] ?? '', cells[c]!, line);
    }
  }

  function addLong(row: readonly string[], at: number, line: number): void {
    const { name, value, unit } = long!;
    const called = name.length === 1 ? row[name[0]!]! : name.map((cell) => row[cell]).join(' ');
    let group = groups.get(called);
    if (group === undefined) {
      group = rawRows(1, 64);
      groups.set(called, group);
      const said = unit < 0 ? '' : (row[unit] ?? '');
      if (said !== '') units.set(called, said);
    }
    growRows(group);
    const k = group.count++;
    group.clock[k] = at;
    group.line[k] = line;
    group.values[0]![k] = numberOf(row[value]!, value, line);
    if (cellNumber(row[value]!, decimalComma) === null && group.unread++ === 0) {
      group.firstUnread = row[value]!;
    }
  }

  function numberOf(cell: string, k: number, line: number): number {
    const number = cellNumber(cell, decimalComma);
    if (number !== null) return number;
    // In a long file other names may hold words; whoever is not wanted is never asked.
    if (long === null) {
      const where = layout.names[k]!;
      const expected = 'a number, or a state such as on or open';
      problems.at(line, k, 'number', { where, expected, got: `"${cell}"` });
    }
    return Number.NaN;
  }
}

function lineCount(text: string): number {
  let count = 1;
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) count++;
  return count;
}

const TIMES: Readonly<Record<TimeForm, string>> = {
  'day first': 'a date with the day first and a time of day',
  'month first': 'a date with the month first and a time of day',
  'year first': 'a time such as 2025-01-31 05:00',
  'epoch s': 'seconds since 1970',
  'epoch ms': 'milliseconds since 1970',
};
const COMMAS =
  'decimal commas between commas? save the table with semicolons, or with quotation marks around numbers';
const ZONE_ALWAYS = 'a time with its zone in all rows or in none';
