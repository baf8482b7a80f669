import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { unitBehind } from '../../units/unit-behind.ts';
import { visibleProse } from '../../units/visible-text.ts';
import { wrapText } from './wrap-text.ts';

/**
 * What nobody gave, widest range first, then words: each with its unit, its low and high, and the
 * number of its source below, because the same source stands behind many values.
 */
export function assumedTable(assumed: readonly Assumed[], width: number): string {
  if (assumed.length === 0) return '';
  const ordered = assumed.toSorted((a, b) => widthOf(b) - widthOf(a));
  const sources = [...new Set(ordered.map(({ source }) => source))];
  const of = ({ source }: Assumed): string => `${sources.indexOf(source) + 1}`;
  const numbers = ordered.filter(({ value }) => typeof value === 'number');
  const words = ordered.filter(({ value }) => typeof value === 'string');
  const rows = numbers.map(
    (one): Row => ({
      path: visibleProse(one.path),
      cells: [valueText(one), rangeText(one), of(one)],
    }),
  );
  return [
    ...(rows.length === 0 ? [] : rowLines(rows, width)),
    ...words.map((one) => wrapText(`${one.value} (${of(one)})`, `${one.path}: `, width)),
    'Widest ranges first; the last number is that of the source:',
    ...sources.map((source, k) => wrapText(source, `${k + 1}: `, width)),
  ].join('\n');
}

type Assumed = PlanMeasures['assumed'][number];

interface Row {
  readonly path: string;
  readonly cells: readonly string[];
}

/** Places to the left, their values to the right; a place that leaves no room stands in a line of its own. */
function rowLines(rows: readonly Row[], width: number): string[] {
  const all = [{ path: 'where', cells: HEADS }, ...rows];
  const wide = HEADS.map((_, k) => Math.max(...all.map(({ cells }) => lengthOf(cells[k]!))));
  const right = wide.reduce((sum, each) => sum + GAP + each, 0);
  const left = Math.min(Math.max(...all.map(({ path }) => lengthOf(path))), width - right);
  return all.flatMap(({ path, cells }) => {
    const values = cells.map((cell, k) => ' '.repeat(GAP) + cell.padStart(wide[k]!)).join('');
    if (lengthOf(path) <= left) return [(path.padEnd(left) + values).trimEnd()];
    return [path, ' '.repeat(Math.max(0, left)) + values];
  });
}

/**
 * How wide a range is beside what lies in it, from 0 to 2; words come last. A range through zero is as
 * wide as can be.
 */
function widthOf({ low, high }: Assumed): number {
  if (low === null || high === null) return -1;
  return high === low ? 0 : (2 * (high - low)) / (Math.abs(high) + Math.abs(low));
}

const valueText = ({ value, unit }: Assumed): string =>
  `${typeof value === 'string' ? value : figureText(value)}${unitBehind(unit)}`;
const rangeText = ({ low, high }: Assumed): string =>
  low === null || high === null ? '' : `${figureText(low)} to ${figureText(high)}`;
const lengthOf = (text: string): number => [...text].length;

const HEADS: readonly string[] = ['value', 'low to high', ''];
const GAP = 2;
