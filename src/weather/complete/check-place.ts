import type { Problem } from '../../units/problem.ts';
import type { Quantity } from '../quantity.ts';
import type { RawSeries } from '../raw-series.ts';

/** Complain of a place that is not known or not on earth, and of columns that no run can do without. */
export function checkPlace(raw: RawSeries, problems: Problem[]): void {
  const complain = (where: string, expected: string, got: string, hint: string) =>
    problems.push({ file: raw.table.file, line: 0, column: 0, where, expected, got, hint });
  for (const [key, [low, high], unit] of COORDINATES) {
    const value = raw.place[key];
    if (value >= low && value <= high) continue;
    const got = Number.isNaN(value) ? 'none' : `${value}`;
    complain(key, `${low} to ${high} ${unit}`, got, PLACE_HINT);
  }
  const has = (quantity: Quantity) => raw.columns.has(quantity);
  if (!has('temperature')) complain('columns', 'a temperature', 'none', '');
  if (!has('wind speed')) complain('columns', 'a wind speed', 'none', '');
  if (!has('relative humidity') && !has('dew point')) {
    complain('columns', 'a relative humidity or a dew point', 'neither', '');
  }
}

const COORDINATES = [
  ['latitude', [-90, 90], 'degrees north'],
  ['longitude', [-180, 180], 'degrees east'],
  ['elevation', [-450, 6000], 'm above the sea'],
] as const;
const PLACE_HINT = 'say it in the file or beside it';
