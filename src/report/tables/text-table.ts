import { visibleProse } from '../../units/visible-text.ts';

/** A column of a table of plain text. */
export interface Column {
  /** Heading of the column; several lines where it has line breaks. */
  readonly head: string;
  readonly cells: readonly string[];
  /** Words set behind the cells, such as "least"; empty for none. */
  readonly marks?: readonly string[];
  /** Alignment of cells and heading; right is for numbers. */
  readonly align?: 'left' | 'right';
}

/** Makers of columns about the same rows: figures to the right, words to the left. */
export function columnsOf<Row>(rows: readonly Row[]) {
  const column =
    (align: 'left' | 'right') =>
    (head: string, cell: (row: Row) => string): Column => ({
      ...{ head, align },
      cells: rows.map((row) => cell(row)),
    });
  return { figures: column('right'), words: column('left') };
}

/**
 * Columns side by side, aligned, with no lines drawn. Where they are wider than `width` characters
 * the table goes on in further blocks below, each with the first column again.
 *
 * @param gap  blanks between columns
 */
export function textTable(columns: readonly Column[], width: number, gap = 2): string {
  const laid = columns.map(layColumn);
  const [first, ...rest] = laid;
  if (first === undefined) return '';
  const blocks: string[][][] = [];
  let block = [first];
  for (const column of rest) {
    if (block.length > 1 && totalWidth([...block, column], gap) > width) {
      blocks.push(block);
      block = [first];
    }
    block.push(column);
  }
  blocks.push(block);
  return blocks.map((each) => joinColumns(each, gap)).join('\n\n');
}

/** Blanks between columns, none at the ends of lines. */
function joinColumns(columns: readonly string[][], gap: number): string {
  const heads = Math.max(...columns.map((column) => column.indexOf(UNDER_HEAD)));
  const padded = columns.map((column) => {
    const blank = ' '.repeat(lengthOf(column[0] ?? ''));
    const missing = heads - column.indexOf(UNDER_HEAD);
    return [...Array<string>(missing).fill(blank), ...column.filter((line) => line !== UNDER_HEAD)];
  });
  const lines = Math.max(...padded.map((column) => column.length));
  return Array.from({ length: lines }, (_, k) =>
    padded
      .map((column) => column[k] ?? '')
      .join(' '.repeat(gap))
      .trimEnd(),
  ).join('\n');
}

/** One column as lines of equal length: head, a marker that the head ends, cells. */
function layColumn({ head, cells, marks = [], align = 'right' }: Column): string[] {
  const texts = cells.map(visibleProse);
  const behind = marks.map(visibleProse);
  const most = Math.max(0, ...behind.map(lengthOf));
  const body = Math.max(0, ...texts.map(lengthOf));
  const marked = texts.map((text, k) => {
    const cell = align === 'right' ? text.padStart(body) : text.padEnd(body);
    return most === 0 ? cell : `${cell} ${(behind[k] ?? '').padEnd(most)}`;
  });
  const heads = head.split('\n').map(visibleProse);
  const wide = Math.max(...heads.map(lengthOf), ...marked.map(lengthOf));
  // A head stands over the numbers, not over the words behind them.
  const over = most === 0 ? wide : Math.max(wide - most - 1, ...heads.map(lengthOf));
  const pad = (text: string, to: number): string =>
    (align === 'right' ? text.padStart(to) : text.padEnd(to)).padEnd(wide);
  return [
    ...heads.map((line) => pad(line, over)),
    UNDER_HEAD,
    ...marked.map((line) => (align === 'right' ? line.padStart(wide) : line.padEnd(wide))),
  ];
}

function totalWidth(columns: readonly string[][], gap: number): number {
  return columns.reduce((sum, column) => sum + lengthOf(column[0] ?? '') + gap, -gap);
}

const lengthOf = (text: string): number => [...text].length;

const UNDER_HEAD = '\n';
