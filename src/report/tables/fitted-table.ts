import type { FittedValue } from '../../scenario/read-scenario.ts';
import { figureText } from '../../units/figure-text.ts';
import { textTable } from './text-table.ts';

/** What a log told, with its range and what was assumed before. */
export function fittedTable(fitted: readonly FittedValue[]): string {
  if (fitted.length === 0) return '';
  const of = (cell: (value: FittedValue) => string) => fitted.map(cell);
  return textTable(
    [
      { head: 'where', cells: of(({ path }) => path), align: 'left' },
      { head: 'value', cells: of(({ value }) => figureText(value)) },
      { head: 'low', cells: of(({ low }) => figureText(low)) },
      { head: 'high', cells: of(({ high }) => figureText(high)) },
      { head: 'before', cells: of(({ from }) => figureText(from)) },
      { head: 'log', cells: of(({ log }) => log), align: 'left' },
    ],
    // Like the table of assumed values: a value stays beside its range.
    Number.POSITIVE_INFINITY,
  );
}
