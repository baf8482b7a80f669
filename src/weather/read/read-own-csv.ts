import { nearestHint } from '../../units/nearest-name.ts';
import type { Problem } from '../../units/problem.ts';
import { QUANTITY_NAMES, type Quantity } from '../quantity.ts';
import type { RawSeries } from '../raw-series.ts';
import { cellProblem, type TextTable } from '../text-table.ts';
import type { WeatherOptions } from '../weather-options.ts';
import { readOwnCsvHead } from './own-csv-head.ts';
import { placeWith } from './place-with.ts';
import { readRows, type WantedColumn, wantedColumn } from './read-rows.ts';
import { trimmedCells } from './table-rows.ts';
import { timeReader } from './time-format.ts';

/**
 * The project's own layout: `# key: value` lines, a header, one row a step.
 *
 * Times are ISO 8601 with their zone. Columns are named as `QUANTITIES` names them and carry its units;
 * temperature, humidity, wind and pressure hold at the stamp, the rest are means of the step it begins.
 */
export function readOwnCsv(
  table: TextTable,
  options: WeatherOptions,
  problems: Problem[],
): RawSeries | null {
  const { head, place, typical, sun } = readOwnCsvHead(table, problems);
  const names = trimmedCells(table, head, problems);
  const iso = timeReader('iso')!;
  const timeCell = names.indexOf('time');
  if (timeCell < 0) {
    const at = { line: Math.min(head + 1, table.lines.length), cell: 0 };
    const got = head < table.lines.length ? `"${names.join(',')}"` : 'nothing';
    const expected = 'a header with the column "time"';
    problems.push(cellProblem(table, at, { where: 'header', expected, got }));
    return null;
  }
  const wanted = wantedOf(table, head, names, options, problems);
  const rows = readRows(
    table,
    {
      from: head + 1,
      to: table.lines.length,
      cells: names.length,
      time: (cells) => {
        const reading = iso.read(cells[timeCell]!.trim());
        if (reading === null) return iso.expected;
        return reading.ahead === null ? ZONE : reading.clock - reading.ahead;
      },
      timeCells: [timeCell],
      timeName: 'time',
      wanted,
      decimalComma: false,
      missing: [],
    },
    problems,
  );
  return {
    ...rows,
    table,
    place: placeWith(place, options),
    typical,
    stamps: { interval: 'beginning', spotDelay: 0, airIsMean: false },
    pressureAtSeaLevel: false,
    sun,
  };
}

function wantedOf(
  table: TextTable,
  head: number,
  names: readonly string[],
  options: WeatherOptions,
  problems: Problem[],
): WantedColumn[] {
  const wanted: WantedColumn[] = [];
  const seen = new Set<string>();
  names.forEach((name, cell) => {
    const known = name === 'time' || (QUANTITY_NAMES as readonly string[]).includes(name);
    const at = { line: head + 1, cell };
    if (seen.has(name)) {
      const got = `"${name}" a second time`;
      problems.push(cellProblem(table, at, { where: 'header', expected: 'each column once', got }));
    } else if (!known) {
      const hint = nearestHint(name, QUANTITY_NAMES) || COLUMNS_HINT;
      const expected = 'a column of a roombalance CSV';
      problems.push(cellProblem(table, at, { where: 'header', expected, got: `"${name}"`, hint }));
    } else if (name !== 'time' && !options.leaveOut?.includes(name as Quantity)) {
      wanted.push(wantedColumn(name as Quantity, cell, name));
    }
    seen.add(name);
  });
  return wanted;
}

const ZONE = 'a time with its zone, such as 2023-01-31T05:00Z or 2023-01-31T05:00+01:00';
const COLUMNS_HINT = `known are time, ${QUANTITY_NAMES.join(', ')}`;
