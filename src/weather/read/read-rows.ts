import type { Problem } from '../../units/problem.ts';
import { QUANTITIES, type Quantity } from '../quantity.ts';
import type { RawColumn } from '../raw-series.ts';
import { cellProblem, type TextTable } from '../text-table.ts';
import type { WeatherNote } from '../weather.ts';
import type { Conversion } from './quantity-units.ts';
import { tableRows } from './table-rows.ts';

/** Which cells of the data lines to read, and how. */
export interface RowPlan {
  /** First data line and the line after the last, counted from 0. */
  readonly from: number;
  readonly to: number;
  /** Cells of the header: the last line must have as many. */
  readonly cells: number;
  /** Time of a line [s UTC], or the end of the sentence "expected ..." where it has none. */
  readonly time: (cells: readonly string[]) => number | string;
  /** Numbers of the cells that `time` reads; a wrong time stands at the first. */
  readonly timeCells: readonly number[];
  readonly timeName: string;
  readonly wanted: readonly WantedColumn[];
  readonly decimalComma: boolean;
  /** Texts that mean "no reading", besides the usual ones. */
  readonly missing: readonly string[];
}

export interface WantedColumn {
  readonly quantity: Quantity;
  readonly cell: number;
  readonly name: string;
  /** Unit the file uses, for messages. */
  readonly unit: string;
  readonly convert: Conversion;
}

export interface Rows {
  readonly time: readonly number[];
  readonly line: readonly number[];
  readonly columns: ReadonlyMap<Quantity, RawColumn>;
  readonly notes: readonly WeatherNote[];
}

/** Numbers of the wanted cells of every data line; lines that cannot be read become problems. */
export function readRows(table: TextTable, plan: RowPlan, problems: Problem[]): Rows {
  const most = plan.to - plan.from;
  const values = plan.wanted.map(() => new Float64Array(most).fill(Number.NaN));
  const missing = new Set([...NO_READING, ...plan.missing]);
  const codes = new Map<string, number>();
  let firstComma: CommaCell | null = null;
  let commas = 0;
  const time: number[] = [];
  const line: number[] = [];
  const rows = tableRows(table, plan.from, plan.to, problems);
  const needed = Math.max(...[...plan.timeCells, ...plan.wanted.map(({ cell }) => cell)]) + 1;
  for (const { line: here, cells } of rows) {
    // Only the last line, where a file may be cut off, must hold more than what is wanted.
    const last = here === rows.at(-1)!.line;
    if (cells.length < needed || (last && cells.length < plan.cells)) {
      const expected = last ? `${plan.cells} cells` : `at least ${needed} cells`;
      problems.push(shortLine(table, here, expected, cells.length, last));
      continue;
    }
    const stamp = plan.time(cells);
    if (typeof stamp === 'string') {
      const got = quoted(plan.timeCells.map((cell) => cells[cell]).join(' '));
      const at = { line: here, cell: plan.timeCells[0]! };
      problems.push(cellProblem(table, at, { where: plan.timeName, expected: stamp, got }));
      continue;
    }
    const row = time.length;
    time.push(stamp);
    line.push(here);
    for (let c = 0; c < plan.wanted.length; c++) {
      const want = plan.wanted[c]!;
      const cell = cells[want.cell]!.trim();
      if (missing.has(cell)) {
        if (cell !== '') codes.set(cell, (codes.get(cell) ?? 0) + 1);
        continue;
      }
      const comma = !plan.decimalComma && WITH_COMMA.test(cell);
      const value = Number(plan.decimalComma || comma ? cell.replace(',', '.') : cell);
      if (Number.isFinite(value)) values[c]![row] = want.convert(value);
      else problems.push(notANumber(table, here, want, cell));
      if (!comma) continue;
      firstComma ??= { line: here, want, cell };
      commas++;
    }
  }
  if (firstComma !== null) problems.push(decimalCommas(table, firstComma, commas));
  const columns = new Map<Quantity, RawColumn>();
  plan.wanted.forEach(({ quantity, name, cell }, c) => {
    columns.set(quantity, { values: values[c]!.subarray(0, time.length), name, cell });
  });
  return { time, line, columns, notes: codeNotes(codes) };
}

/** A column that is wanted in the quantity's own unit. */
export function wantedColumn(quantity: Quantity, cell: number, name: string): WantedColumn {
  return { quantity, cell, name, unit: QUANTITIES[quantity].unit, convert: (value) => value };
}

function shortLine(
  table: TextTable,
  line: number,
  expected: string,
  count: number,
  last: boolean,
): Problem {
  return {
    file: table.file,
    line,
    column: table.lines[line - 1]!.length + 1,
    where: last ? 'last line' : '',
    expected,
    got: `${count}`,
    hint: last ? 'the file looks cut off: fetch it again or delete this line' : '',
  };
}

function notANumber(table: TextTable, line: number, want: WantedColumn, cell: string): Problem {
  const expected = `a number in ${want.unit}`;
  return cellProblem(
    table,
    { line, cell: want.cell },
    { where: want.name, expected, got: quoted(cell) },
  );
}

interface CommaCell {
  readonly line: number;
  readonly want: WantedColumn;
  readonly cell: string;
}

/** Said once of a whole file, whose numbers are read as if they had points: gaps would only hide it. */
function decimalCommas(table: TextTable, { line, want, cell }: CommaCell, count: number): Problem {
  const problem = notANumber(table, line, want, cell);
  const more = count === 1 ? '' : `, and ${count - 1} more like it`;
  const hint = 'a decimal comma needs a column map that says so, "decimal comma: true"';
  return { ...problem, got: `${problem.got}${more}`, hint };
}

function codeNotes(codes: ReadonlyMap<string, number>): WeatherNote[] {
  return [...codes].map(([code, count]) => ({
    id: 'missing-code',
    text: `${count} ${count === 1 ? 'cell' : 'cells'} with the code ${code} read as missing`,
  }));
}

const quoted = (text: string | undefined): string =>
  text === undefined || text.trim() === '' ? 'nothing' : `"${text.trim()}"`;

const WITH_COMMA = /^[-+]?\d+,\d+$/;
/** Texts that no instrument reads, in any layout. */
const NO_READING = [
  '',
  ...['NA', 'N/A', 'NaN', 'nan', 'null', 'unknown', 'unavailable'],
  ...['-9900', '-9900.0', '-9900.000', '-9999', '-9999.0', '-999', '-999.0'],
];
