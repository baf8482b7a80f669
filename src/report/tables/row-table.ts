import { sumText } from '../../units/sum-text.ts';
import { textTable } from './text-table.ts';

/** A figure with its name and unit, and its decimals, none where left out. */
export type FigureRow = readonly [
  label: string,
  value: number | null,
  unit: string,
  decimals?: number,
];

/** One figure a line: its name, the figure, its unit. */
export function rowTable(rows: readonly FigureRow[], width: number): string {
  const columns = [
    { head: '', cells: rows.map(([label]) => label), align: 'left' as const },
    { head: '', cells: rows.map(([, value, , decimals = 0]) => sumText(value, decimals)) },
    { head: '', cells: rows.map(([, , unit]) => unit), align: 'left' as const },
  ];
  return textTable(columns, width).replace(/^\n/, '');
}
