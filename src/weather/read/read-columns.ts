import { nearestHint } from '../../units/nearest-name.ts';
import type { Problem } from '../../units/problem.ts';
import type { Quantity } from '../quantity.ts';
import { QUANTITIES } from '../quantity.ts';
import type { RawSeries } from '../raw-series.ts';
import { cellProblem, type TextTable } from '../text-table.ts';
import { TYPICAL_YEAR } from '../typical-year.ts';
import type { WeatherOptions } from '../weather-options.ts';
import { checkColumnMap } from './check-column-map.ts';
import { NOWHERE, placeWith } from './place-with.ts';
import { conversionFrom } from './quantity-units.ts';
import { readRows, type WantedColumn } from './read-rows.ts';
import { trimmedCells } from './table-rows.ts';
import { timeReader } from './time-format.ts';

/** Any CSV with a header, by a column map. */
export function readColumns(
  plain: TextTable,
  options: WeatherOptions,
  problems: Problem[],
): RawSeries | null {
  const map = options.columns ?? { time: { column: 'time' }, quantities: {} };
  checkColumnMap(map, problems);
  const format = timeReader(map.time.format ?? 'iso');
  if (problems.length > 0 || format === null) return null;
  const head = map.skipLines ?? 0;
  const header = plain.lines[head] ?? '';
  const table = { ...plain, delimiter: map.delimiter ?? likelyDelimiter(header) };
  const names = trimmedCells(table, head, problems);
  const cellOf = (name: string, where: string) => {
    const cell = names.indexOf(name);
    if (cell < 0) problems.push(noSuchColumn(table, head, names, name, where));
    return cell;
  };
  const timeNames = [map.time.column].flat();
  const timeCells = timeNames.map((name) => cellOf(name, 'time'));
  const wanted: WantedColumn[] = [];
  for (const [name, column] of Object.entries(map.quantities)) {
    const quantity = name as Quantity;
    if (options.leaveOut?.includes(quantity)) continue;
    const unit = column.unit ?? QUANTITIES[quantity].unit;
    const cell = cellOf(column.column, quantity);
    wanted.push({
      quantity,
      cell,
      name: column.column,
      unit,
      convert: conversionFrom(quantity, unit)!,
    });
  }
  if (problems.length > 0) return null;
  const ahead = map.time.utcOffset === undefined ? null : map.time.utcOffset * 3600;
  const rows = readRows(
    table,
    {
      from: head + 1,
      to: table.lines.length,
      cells: names.length,
      time: (cells) => {
        const reading = format.read(timeCells.map((cell) => cells[cell]!.trim()).join(' '));
        if (reading === null) return format.expected;
        const offset = reading.ahead ?? ahead;
        if (offset === null) return NO_ZONE;
        return (map.typical === true ? inTypicalYear(reading.clock) : reading.clock) - offset;
      },
      timeCells,
      timeName: timeNames.join(' and '),
      wanted,
      decimalComma: map.decimalComma === true,
      missing: (map.missing ?? []).map(String),
    },
    problems,
  );
  return {
    ...rows,
    table,
    place: placeWith({ ...NOWHERE, title: table.file }, options),
    typical: map.typical === true,
    stamps: {
      interval: map.time.stamp ?? 'beginning',
      spotDelay: 0,
      airIsMean: map.time.airIsMean === true,
    },
    pressureAtSeaLevel: false,
  };
}

/** An instant moved to the year that typical years are dated in, month, day and time kept. */
function inTypicalYear(clock: number): number {
  const date = new Date(clock * 1000);
  const year = date.getUTCFullYear();
  return clock + (Date.UTC(TYPICAL_YEAR, 0) - Date.UTC(year, 0)) / 1000;
}

function likelyDelimiter(header: string): string {
  const times = (mark: string) => header.split(mark).length;
  return [',', ';', '\t'].reduce((best, mark) => (times(mark) > times(best) ? mark : best));
}

function noSuchColumn(
  table: TextTable,
  head: number,
  names: readonly string[],
  name: string,
  where: string,
): Problem {
  return cellProblem(
    table,
    { line: Math.min(head + 1, table.lines.length), cell: 0 },
    {
      where,
      expected: `a column "${name}"`,
      got: `the columns ${names.join(', ')}`,
      hint: nearestHint(name, names),
    },
  );
}

const NO_ZONE = 'a time with its zone (or a column map with the offset from UTC)';
