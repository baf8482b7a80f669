import type { DateOrder } from './log-options.ts';
import type { TableLayout } from './sniff-table.ts';
import { linesFrom, splitCells } from './split-cells.ts';
import { dateNumbers } from './time-text.ts';

/**
 * The order of day and month in a file: a year in front or a number above 12 decides. Dates with
 * points, as in 3.4.2025, put the day first wherever they are in use.
 *
 * @returns null where every date of the file could be read both ways
 */
export function dateOrder(text: string, layout: TableLayout): DateOrder | null {
  const [cell = 0] = layout.timeCells;
  let n = 0;
  let points = false;
  for (const line of linesFrom(text)) {
    if (n++ < layout.head) continue;
    const written = splitCells(line, layout.separator)?.[cell];
    const numbers = written === undefined ? null : dateNumbers(written);
    if (numbers === null) continue;
    if (numbers.yearFirst) return 'year first';
    if (numbers.first > 12) return 'day first';
    if (numbers.second > 12) return 'month first';
    points ||= /^\d+\.\d+\./.test(written!);
  }
  return points ? 'day first' : null;
}
