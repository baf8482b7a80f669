import type { Problem } from '../../units/problem.ts';
import { QUANTITIES, type Quantity } from '../quantity.ts';
import type { RawColumn, RawSeries } from '../raw-series.ts';
import { cellProblem } from '../text-table.ts';
import { looksLikeFahrenheit } from './looks-like-fahrenheit.ts';

/**
 * Complain of every number outside what can be true outdoors; neighbouring rows of one column make one
 * problem. What was complained of is moved to the edge of its range, so that later checks can go on.
 */
export function checkRanges(raw: RawSeries, problems: Problem[]): void {
  for (const [quantity, column] of raw.columns) {
    const suspect = quantity === 'temperature' || quantity === 'dew point';
    if (suspect && looksLikeFahrenheit(column.values)) {
      problems.push(fahrenheit(raw, quantity, column));
    } else checkColumn(raw, quantity, column, problems);
  }
  checkDewPoint(raw, problems);
  for (const [quantity, { values }] of raw.columns) clamp(values, QUANTITIES[quantity].range);
}

function checkColumn(raw: RawSeries, quantity: Quantity, column: RawColumn, problems: Problem[]) {
  const { unit, range, hint } = QUANTITIES[quantity];
  const [low, high] = range;
  const { values } = column;
  const code = quantity === 'temperature' ? 999 : high;
  let k = 0;
  while (k < values.length) {
    const value = values[k]!;
    if (!(value < low || value > high)) {
      k++;
      continue;
    }
    let end = k + 1;
    while (end < values.length && (values[end]! < low || values[end]! > high)) end++;
    const more = end - k > 1 ? ` and so on to line ${raw.line[end - 1]}` : '';
    const nines = value >= code && /^9+$/.test(String(value));
    problems.push(
      cellProblem(
        raw.table,
        { line: raw.line[k]!, cell: column.cell },
        {
          where: column.name,
          expected: `${low} to ${high} ${unit}`,
          got: `${short(value)}${more}`,
          hint: nines ? 'nines often mean "no reading": leave the cell empty' : hint,
        },
      ),
    );
    k = end;
  }
}

function fahrenheit(raw: RawSeries, quantity: Quantity, column: RawColumn): Problem {
  const known = column.values.filter((value) => !Number.isNaN(value)).sort();
  return cellProblem(
    raw.table,
    { line: raw.line[0]!, cell: column.cell },
    {
      where: column.name,
      expected: `${quantity} in °C`,
      got: `${short(known[0]!)} to ${short(known.at(-1)!)}, half of them above ${short(known[known.length >> 1]!)}`,
      hint: 'this looks like Fahrenheit: read it with a column map whose unit is °F',
    },
  );
}

/** Vapour cannot be denser than saturated: a dew point above the air's temperature is a mix-up. */
function checkDewPoint(raw: RawSeries, problems: Problem[]) {
  const air = raw.columns.get('temperature');
  const dew = raw.columns.get('dew point');
  if (air === undefined || dew === undefined) return;
  let first = -1;
  let times = 0;
  for (let k = 0; k < air.values.length; k++) {
    if (!(dew.values[k]! > air.values[k]! + DEW_ROUNDING)) continue;
    if (first < 0) first = k;
    times++;
  }
  if (first < 0) return;
  const others = times > 1 ? `, and in ${times - 1} more` : '';
  problems.push(
    cellProblem(
      raw.table,
      { line: raw.line[first]!, cell: dew.cell },
      {
        where: dew.name,
        expected: `at most the temperature, ${short(air.values[first]!)} °C`,
        got: `${short(dew.values[first]!)}${others}`,
      },
    ),
  );
}

function clamp(values: Float64Array, [low, high]: readonly [number, number]) {
  for (let k = 0; k < values.length; k++) {
    if (values[k]! < low) values[k] = low;
    else if (values[k]! > high) values[k] = high;
  }
}

const short = (value: number): string => String(Math.round(value * 100) / 100);

/** Difference that two rounded sensors may show in fog. [K] */
const DEW_ROUNDING = 1;
