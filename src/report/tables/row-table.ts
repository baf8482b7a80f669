import { figureText } from '../../units/figure-text.ts';
import { textTable, WIDTH } from './text-table.ts';

/** A figure with its name and unit; `decimals` left out is 0. */
export interface FigureRow {
  readonly label: string;
  readonly value: number | null;
  readonly unit: string;
  readonly decimals?: number;
}

/** One figure a line: its name, the figure, its unit. */
export function rowTable(rows: readonly FigureRow[], width = WIDTH): string {
  const columns = [
    { head: '', cells: rows.map(({ label }) => label), align: 'left' as const },
    { head: '', cells: rows.map(({ value, decimals }) => figureText(value, decimals ?? 0)) },
    { head: '', cells: rows.map(({ unit }) => unit), align: 'left' as const },
  ];
  return textTable(columns, width).replace(/^\n/, '');
}
