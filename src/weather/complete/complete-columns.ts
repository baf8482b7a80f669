import { isoTime } from '../../units/iso-time.ts';
import type { Problem } from '../../units/problem.ts';
import { QUANTITIES, type Quantity } from '../quantity.ts';
import type { RawSeries } from '../raw-series.ts';
import { cellProblem } from '../text-table.ts';
import type { WeatherNote } from '../weather.ts';
import { LONGEST_GAP, SHORT_GAP, type WeatherOptions } from '../weather-options.ts';
import { duration, type TimeGrid } from './check-times.ts';
import { fillGaps, type Gap } from './fill-gaps.ts';
import { vapourPressureColumn } from './vapour-pressure-column.ts';

/** Columns on an even grid without holes; vapour pressure in place of humidity and dew point. */
export type CompleteColumns = ReadonlyMap<Quantity | 'vapour pressure', Float64Array>;

/**
 * Put every column on the grid and fill its gaps; tell which hours, and complain of gaps too long.
 *
 * Pressure hardly matters and is bridged however long its gap; direction may stay unknown.
 */
export function completeColumns(
  raw: RawSeries,
  grid: TimeGrid,
  options: WeatherOptions,
  problems: Problem[],
  notes: WeatherNote[],
): CompleteColumns {
  const complete = new Map<Quantity | 'vapour pressure', Float64Array>();
  const filled = new Map<string, Named>();
  const left = new Map<string, Named>();
  const perHour = 3600 / grid.step;
  const straight = SHORT_GAP * perHour;
  const longest = Math.min(LONGEST_GAP, options.longestGap ?? SHORT_GAP) * perHour;

  const finish = (name: Quantity | 'vapour pressure', quantity: Quantity, values: Float64Array) => {
    complete.set(name, values);
    if (quantity === 'wind direction') return;
    const anyLength = quantity === 'pressure' ? Number.POSITIVE_INFINITY : straight;
    const limits = { straight: anyLength, longest };
    const gaps = fillGaps(values, limits, 24 * perHour, raw.typical);
    for (const gap of gaps.filled) {
      collect(filled, gap, quantity, gap.length <= limits.straight ? STRAIGHT : BORROWED);
    }
    for (const gap of gaps.left) collect(left, gap, quantity, '');
  };

  for (const [quantity, column] of raw.columns) {
    if (HUMIDITIES.includes(quantity)) continue;
    const placed = onGrid(column.values, grid);
    if (QUANTITIES[quantity].unit === 'W/m2') clipBelowZero(placed);
    if (placed.some((value) => !Number.isNaN(value)) || REQUIRED.includes(quantity)) {
      finish(quantity, quantity, placed);
    } else notes.push({ id: 'column-empty', text: `${column.name} has no reading at all` });
  }
  const temperature = complete.get('temperature');
  if (temperature !== undefined) {
    const humidity = HUMIDITIES.find((quantity) => raw.columns.has(quantity));
    const relative = raw.columns.get('relative humidity');
    const dew = raw.columns.get('dew point');
    // Where the temperature is missing and stays so, that is the complaint, and not humidity too.
    const vapour = vapourPressureColumn(
      temperature.map((t) => (Number.isNaN(t) ? 0 : t)),
      relative === undefined ? null : onGrid(relative.values, grid),
      dew === undefined ? null : onGrid(dew.values, grid),
    );
    if (humidity !== undefined) finish('vapour pressure', humidity, vapour);
  }
  for (const named of filled.values()) notes.push(filledNote(grid, named));
  const before = problems.slice();
  for (const { gap, names } of left.values()) {
    const problem = gapProblem(raw, grid, gap, names);
    if (!before.some((other) => isInside(raw, grid, gap, other.line))) problems.push(problem);
  }
  return complete;
}

interface Named {
  readonly gap: Gap;
  /** How it was filled; empty where it was not. */
  readonly how: string;
  readonly names: Quantity[];
}

function collect(gaps: Map<string, Named>, gap: Gap, name: Quantity, how: string) {
  const key = `${gap.from} ${gap.length} ${how}`;
  const named = gaps.get(key);
  if (named === undefined) gaps.set(key, { gap, how, names: [name] });
  else named.names.push(name);
}

function onGrid(values: Float64Array, grid: TimeGrid): Float64Array {
  return Float64Array.from(grid.row, (row) => (row < 0 ? Number.NaN : values[row]!));
}

/** A radiometer at night reads a little below zero. */
function clipBelowZero(values: Float64Array) {
  for (let k = 0; k < values.length; k++) if (values[k]! <= 0) values[k] = 0;
}

function filledNote(grid: TimeGrid, { gap, names, how }: Named): WeatherNote {
  const length = duration(gap.length * grid.step);
  const from = isoTime(grid.start + gap.from * grid.step);
  return { id: 'gap-filled', text: `${from}, ${length}: ${names.join(', ')} filled ${how}` };
}

/** Whether a line, complained of already, stands where the gap is: then it is the reason. */
function isInside(raw: RawSeries, grid: TimeGrid, gap: Gap, line: number): boolean {
  const row = (k: number) => grid.row[((k % grid.count) + grid.count) % grid.count]!;
  const above = raw.line[row(gap.from - 1)] ?? 0;
  const below = raw.line[row(gap.from + gap.length)] ?? Number.POSITIVE_INFINITY;
  return line > above && line < below;
}

function gapProblem(raw: RawSeries, grid: TimeGrid, gap: Gap, names: Quantity[]): Problem {
  const from = isoTime(grid.start + gap.from * grid.step);
  const last = isoTime(grid.start + ((gap.from + gap.length - 1) % grid.count) * grid.step);
  const length = duration(gap.length * grid.step);
  let row = gap.from;
  while (row < grid.count && grid.row[row]! < 0) row++;
  const line = raw.line[grid.row[row] ?? -1] ?? raw.line.at(-1)!;
  const rowsMissing = grid.row[gap.from]! < 0;
  const only = names.length === 1 ? raw.columns.get(names[0]!) : undefined;
  return cellProblem(
    raw.table,
    { line, cell: rowsMissing ? 0 : (only?.cell ?? 0) },
    {
      where: names.join(', '),
      expected: `no gap longer than ${SHORT_GAP} hours`,
      got: `${rowsMissing ? 'no rows' : 'no readings'} from ${from} to ${last}, ${length}`,
      hint:
        gap.length * grid.step <= LONGEST_GAP * 3600
          ? 'a longer gap is filled from the days around it only where the longest gap is raised'
          : '',
    },
  );
}

const STRAIGHT = 'by straight lines';
const BORROWED = 'by the mean of the same hours of the days around';
const REQUIRED: readonly Quantity[] = ['temperature', 'wind speed'];
const HUMIDITIES: readonly Quantity[] = ['relative humidity', 'dew point'];
