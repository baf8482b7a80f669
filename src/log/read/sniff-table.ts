import { meaning } from '../../units/unit-words.ts';
import { linesFrom, splitCells } from './split-cells.ts';
import { epochForm, isDate, isDateTime, isTimeOfDay } from './time-text.ts';

/** How the text of a log is laid out, as its first lines show. */
export interface TableLayout {
  readonly separator: string;
  /** Lines above the first row, header included. */
  readonly head: number;
  /** Names of the columns, from the header; "column 3" where there is none. */
  readonly names: readonly string[];
  /** Cells of the line above the rows; null for none. */
  readonly headed: number | null;
  /** Cells of the time: one, or one of the date and one of the time of day. */
  readonly timeCells: readonly number[];
  readonly epoch: 'epoch s' | 'epoch ms' | null;
  readonly decimalComma: boolean;
  /** Set where each row names what it reads. */
  readonly long: LongColumns | null;
}

/** Columns of a long file. */
interface LongColumns {
  /** Those that together name the reading. */
  readonly name: readonly number[];
  readonly value: number;
  /** -1 where there is none. */
  readonly unit: number;
}

/** The layout of a text, or null where no column of it looks like times. */
export function sniffTable(text: string): TableLayout | null {
  const lines: string[] = [];
  for (const line of linesFrom(text)) if (lines.push(line) === LOOKED_AT) break;
  for (const separator of SEPARATORS) {
    const layout = layoutWith(lines, separator);
    if (layout !== null) return layout;
  }
  return null;
}

function layoutWith(lines: readonly string[], separator: string): TableLayout | null {
  const rows = lines.map((line) => splitCells(line, separator) ?? []);
  const begins = firstOfMost(
    rows.map((cells) => (cells.length > 1 ? (timeCellsOf(cells)?.join(' ') ?? '') : '')),
  );
  if (begins < 0) return null;
  const timeCells = timeCellsOf(rows[begins]!)!;
  const data = rows.slice(begins).filter((cells) => cells.length > 1);
  const timed = data.filter((cells) => timeCellsOf(cells) !== null);
  if (timed.length < data.length * MOST_ROWS) return null;
  const above = rows.slice(0, begins).filter((cells) => cells.length > 1);
  const named = headerOf(above, rows[begins]!.length);
  const cells = bestTime(named, rows[begins]!, timeCells);
  const epoch = cells.length === 1 ? epochForm(rows[begins]![cells[0]!]!) : null;
  return {
    separator,
    head: begins,
    names: named,
    headed: above.at(-1)?.length ?? null,
    timeCells: cells,
    epoch,
    decimalComma: hasDecimalComma(data, separator, cells),
    long: longColumns(named, data, cells),
  };
}

/** First place of the text that stands most often, empty ones left aside; a preamble may hold a date. */
function firstOfMost(texts: readonly string[]): number {
  const counts = new Map<string, number>();
  for (const text of texts) if (text !== '') counts.set(text, (counts.get(text) ?? 0) + 1);
  const [most] = [...counts].sort(([, a], [, b]) => b - a);
  return most === undefined ? -1 : texts.indexOf(most[0]);
}

/** Where in a row a time stands: a date with its time of day, an epoch count, or the two apart. */
function timeCellsOf(cells: readonly string[]): number[] | null {
  const whole = cells.findIndex((cell) => isDateTime(cell) || epochForm(cell) !== null);
  const date = cells.findIndex((cell) => isDate(cell));
  const time = cells.findIndex((cell) => isTimeOfDay(cell));
  if (whole >= 0) return [whole];
  if (date >= 0 && time >= 0) return [date, time];
  return date >= 0 ? [date] : null;
}

/** Of several times in a row the one in UTC, else the first. */
function bestTime(names: readonly string[], row: readonly string[], found: number[]): number[] {
  if (found.length > 1) return found;
  const inUtc = row.findIndex(
    (cell, k) => (isDateTime(cell) || epochForm(cell) !== null) && saysUtc(names[k] ?? ''),
  );
  return inUtc >= 0 ? [inUtc] : found;
}

export const saysUtc = (name: string): boolean => /(^|[^a-z])(utc|gmt)([^a-z]|$)/i.test(name);

/** Names of columns from the line above the rows; a line of units in between is put behind them. */
function headerOf(above: readonly string[][], count: number): string[] {
  const last = above.at(-1);
  const before = above.at(-2);
  const unnamed = (k: number) => `column ${k + 1}`;
  if (last === undefined) return Array.from({ length: count }, (_, k) => unnamed(k));
  const areUnits = last.every(
    (cell) => cell === '' || meaning(cell.replace(/[[\]()]/g, '')) !== null,
  );
  const names = areUnits && before !== undefined ? before : last;
  return Array.from({ length: Math.max(count, names.length) }, (_, k) => {
    const name = (names[k] ?? '').replace(/^[#\s]+/, '') || unnamed(k);
    const unit = areUnits && names === before ? (last[k] ?? '') : '';
    return unit === '' ? name : `${name} [${unit.replace(/[[\]()]/g, '')}]`;
  });
}

/** A comma is the decimal mark where it is not always followed by three digits beside points. */
function hasDecimalComma(
  data: readonly string[][],
  separator: string,
  timeCells: readonly number[],
): boolean {
  const cells = data.flatMap((row) => row.filter((_, k) => !timeCells.includes(k)));
  const commas = cells.filter((cell) => /^[-+−]?\d+,\d+$/.test(cell));
  if (commas.length === 0) return false;
  const points = cells.some((cell) => /^[-+−]?\d+\.\d+$/.test(cell));
  const thousands = commas.every((cell) => /^[-+−]?\d{1,3},\d{3}$/.test(cell));
  return !(thousands && (points || separator === ','));
}

/** Whether rows name what they read: a column of values, and one or more that say of what. */
function longColumns(
  names: readonly string[],
  data: readonly string[][],
  timeCells: readonly number[],
): LongColumns | null {
  const free = (k: number) => !timeCells.includes(k);
  const value = names.findIndex((name, k) => free(k) && VALUE.test(name));
  if (value < 0) return null;
  const isText = (k: number) =>
    data.some((cells) => cells[k] !== undefined && /\p{L}/u.test(cells[k]!));
  const name = names.flatMap((text, k) =>
    free(k) && k !== value && NAME.test(text) && isText(k) ? [k] : [],
  );
  if (name.length === 0) return null;
  return { name, value, unit: names.findIndex((text) => UNIT.test(text)) };
}

const SEPARATORS = ['\t', ';', ',', '|'];
const LOOKED_AT = 200;
const MOST_ROWS = 0.5;
// In the languages in which columns are understood.
const VALUE =
  /^(state|value|reading|val|wert|messwert|valore?|valeur|waarde|värde|værdi|verdi)s?$/i;
const NAME =
  /^(entity|sensor|name|series|channel|point|metric|measurement|device|what|quantity|room|location|place|id|raum|type|attribute|bezeichnung|nom|nome|nombre|naam|namn|navn|pièce|stanza|habitación|kamer|rum|rom)([ _.-]?(id|name))?$/i;
const UNIT = /^(units?|einheit|unité|unità|unidad|eenheid|enhet|enhed)([ _.-].*)?$/i;
