import { type CsvError, parse } from 'csv-parse/browser/esm/sync';
import type { Problem } from '../../units/problem.ts';
import { cellProblem, type TextTable } from '../text-table.ts';

/** One record of a table. */
export interface TableRow {
  /** Number of the line on which the record starts, counted from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/**
 * The records of a stretch of lines, blank ones left out.
 *
 * Quotation marks as in RFC 4180: inside a quoted cell the delimiter and line breaks count for nothing
 * and a doubled mark is one mark. A row whose marks do not pair is left out and becomes a problem.
 *
 * @param from  first line, counted from 0
 * @param to  line after the last
 */
export function tableRows(
  table: TextTable,
  from: number,
  to: number,
  problems: Problem[],
): TableRow[] {
  const lines = table.lines.slice(from, to);
  if (table.delimiter === ' ') return cutRows(lines, from, (text) => text.trim().split(/\s+/));
  // Without a quotation mark, as in nearly every weather file, there is nothing to parse.
  if (!lines.some((text) => text.includes('"'))) {
    return cutRows(lines, from, (text) => text.split(table.delimiter));
  }
  return quotedRows(table, from, lines, problems);
}

/** Cells of one line, trimmed; none where its quotation marks do not pair. */
export function trimmedCells(table: TextTable, line: number, problems: Problem[]): string[] {
  const [row] = tableRows(table, line, line + 1, problems);
  return row === undefined ? [] : row.cells.map((cell) => cell.trim());
}

function cutRows(
  lines: readonly string[],
  from: number,
  cut: (text: string) => string[],
): TableRow[] {
  return lines.flatMap((text, k) =>
    text.trim() === '' ? [] : [{ line: from + k + 1, cells: cut(text) }],
  );
}

function quotedRows(
  table: TextTable,
  from: number,
  lines: readonly string[],
  problems: Problem[],
): TableRow[] {
  const rows: TableRow[] = [];
  let done = 0; // lines of this stretch that are read or given up
  let astray = false; // inside a cell that did not close where it should
  parse(lines.join('\n'), {
    delimiter: table.delimiter,
    record_delimiter: '\n',
    relax_column_count: true,
    skip_empty_lines: true,
    skip_records_with_error: true,
    on_record: (cells: string[], { lines: end }) => {
      const start = end - cells.reduce((sum, cell) => sum + cell.split('\n').length - 1, 0);
      done = end;
      astray = false;
      if (cells.length > 1 || cells[0]!.trim() !== '') rows.push({ line: from + start, cells });
      return null;
    },
    on_skip: (error) => {
      const wrong = error as CsvError & MarkPlace;
      const inside = wrong.code === 'INVALID_OPENING_QUOTE';
      // One problem a row is enough, and what follows from another is none of its own.
      if (wrong.lines > done && (inside || !astray)) {
        const line = from + (inside ? wrong.lines : firstText(lines, done));
        problems.push(cellProblem(table, { line, cell: wrong.column }, markTrouble(wrong, from)));
      }
      astray = !inside;
      done = wrong.lines;
    },
  });
  return rows;
}

/** What the library tells of the place of a mark, beside what its types do. */
interface MarkPlace {
  readonly lines: number;
  /** Cell, counted from 0. */
  readonly column: number;
}

/** The first line after so many that is not empty, counted from 1. */
function firstText(lines: readonly string[], done: number): number {
  const k = lines.findIndex((text, n) => n >= done && text !== '');
  return k + 1;
}

function markTrouble(
  { code, lines }: CsvError & MarkPlace,
  from: number,
): Pick<Problem, 'where' | 'expected' | 'got' | 'hint'> {
  const where = 'quotation marks';
  if (code === 'CSV_QUOTE_NOT_CLOSED') {
    return { where, expected: 'a mark that closes this cell', got: 'none', hint: '' };
  }
  const expected = 'marks only around whole cells';
  const got =
    code === 'INVALID_OPENING_QUOTE'
      ? 'one inside a cell'
      : `text behind the closing one in line ${from + lines}`;
  return { where, expected, got, hint: 'inside a quoted cell a mark is written twice' };
}
