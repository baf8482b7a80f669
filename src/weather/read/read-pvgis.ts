import type { Problem } from '../../units/problem.ts';
import type { Quantity } from '../quantity.ts';
import type { RawSeries } from '../raw-series.ts';
import type { TextTable } from '../text-table.ts';
import { fromSeveralYears, stampSeconds } from '../typical-year.ts';
import type { WeatherOptions } from '../weather-options.ts';
import { placeWith } from './place-with.ts';
import { readRows, wantedColumn } from './read-rows.ts';
import { trimmedCells } from './table-rows.ts';

/**
 * A typical year of PVGIS: lines of place and of the year each month was taken from, a header, hours
 * by UTC as yyyymmdd:hhmm, and a legend below.
 *
 * Every value is for a moment. The sun's were taken some minutes after the stamp, as the head says
 * ("Irradiance Time Offset"); they are turned into means of the hour by straight lines.
 */
export function readPvgis(
  table: TextTable,
  options: WeatherOptions,
  problems: Problem[],
): RawSeries | null {
  const head = table.lines.findIndex((line) => /^time\s*\(UTC\)/i.test(line));
  if (head < 0) {
    problems.push({
      ...{ file: table.file, line: table.lines.length, column: 1, where: 'header', hint: '' },
      expected: 'a line that begins with "time(UTC)"',
      got: 'none',
    });
    return null;
  }
  const names = trimmedCells(table, head, problems);
  const foot = table.lines.findIndex((line, k) => k > head && !/^\s*\d{4}/.test(line));
  const to = foot < 0 ? table.lines.length : foot;
  const years = table.lines.slice(head + 1, to).map((line) => Number(line.slice(0, 4)));
  const typical = fromSeveralYears(years);
  const rows = readRows(
    table,
    {
      from: head + 1,
      to,
      cells: names.length,
      time: (cells) => {
        const found = STAMP.exec(cells[0]!);
        if (found === null) return STAMP_EXPECTED;
        const [year, month, day, hour, minute] = found.slice(1).map(Number);
        const at = { year: year!, month: month!, day: day!, hour: hour!, minute: minute! };
        return stampSeconds(at, typical) ?? STAMP_EXPECTED;
      },
      timeCells: [0],
      timeName: 'time(UTC)',
      wanted: COLUMNS.flatMap(([quantity, name]) => {
        const cell = names.findIndex((header) => header.toLowerCase() === name.toLowerCase());
        const unwanted = cell < 0 || options.leaveOut?.includes(quantity);
        return unwanted ? [] : [wantedColumn(quantity, cell, name)];
      }),
      decimalComma: false,
      missing: [],
    },
    problems,
  );
  const number = (key: RegExp) => Number(said(table, head, key) || 'none');
  const latitude = number(/^Latitude/i);
  const longitude = number(/^Longitude/i);
  const title = `PVGIS typical year at ${latitude}, ${longitude}`;
  const own = { title, latitude, longitude, elevation: number(/^Elevation/i) };
  const delay = spotDelay(table, head, problems);
  return {
    ...rows,
    table,
    place: placeWith(own, options),
    typical,
    stamps: { interval: 'instant', spotDelay: delay, airIsMean: false },
    pressureAtSeaLevel: false,
  };
}

/** How long after the time of its row the sun was looked at. [s] */
function spotDelay(table: TextTable, head: number, problems: Problem[]): number {
  const written = said(table, head, OFFSET);
  const hours = Number(written || '0');
  if (hours >= -1 && hours <= 1) return 3600 * hours;
  problems.push({
    ...{
      file: table.file,
      line: 1 + table.lines.findIndex((line) => OFFSET.test(line)),
      column: 1,
    },
    ...{ where: 'Irradiance Time Offset', expected: 'hours from -1 to 1', got: `"${written}"` },
    hint: '',
  });
  return 0;
}

const OFFSET = /^Irradiance Time Offset/i;

/** What follows the colon in the first head line that begins so. */
function said(table: TextTable, head: number, key: RegExp): string {
  const line = table.lines.slice(0, head).find((text) => key.test(text)) ?? '';
  return line.slice(line.lastIndexOf(':') + 1).trim();
}

const COLUMNS: readonly (readonly [Quantity, string])[] = [
  ['temperature', 'T2m'],
  ['relative humidity', 'RH'],
  ['global horizontal', 'G(h)'],
  ['direct normal', 'Gb(n)'],
  ['diffuse horizontal', 'Gd(h)'],
  ['wind speed', 'WS10m'],
  ['wind direction', 'WD10m'],
  ['pressure', 'SP'],
];
const STAMP = /^\s*(\d{4})(\d\d)(\d\d):(\d\d)(\d\d)\s*$/;
const STAMP_EXPECTED = 'a time as yyyymmdd:hhmm';
