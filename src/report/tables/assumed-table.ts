import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { textTable, WIDTH } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/**
 * What nobody gave, with its low and high, and the sources by number below: the same source stands
 * behind many values.
 */
export function assumedTable(assumed: PlanMeasures['assumed'], width = WIDTH): string {
  if (assumed.length === 0) return '';
  const sources = [...new Set(assumed.map(({ source }) => source))];
  const table = textTable(
    [
      { head: 'where', cells: assumed.map(({ path }) => path), align: 'left' },
      { head: 'value', cells: assumed.map(({ value }) => valueText(value)) },
      { head: 'low', cells: assumed.map(({ low }) => (low === null ? '' : figureText(low))) },
      { head: 'high', cells: assumed.map(({ high }) => (high === null ? '' : figureText(high))) },
      { head: 'source', cells: assumed.map(({ source }) => `${sources.indexOf(source) + 1}`) },
    ],
    // Splitting this table into blocks would part a value from its range: long lines are better.
    Number.POSITIVE_INFINITY,
  );
  const notes = sources.map((source, k) => wrapText(source, `${k + 1}: `, width));
  return [table, 'Units as in docs/scenario.md. Sources:', ...notes].join('\n');
}

const valueText = (value: number | string): string =>
  typeof value === 'string' ? value : figureText(value);
