import type { Problem } from '../../units/problem.ts';
import type { Quantity } from '../quantity.ts';
import type { RawSeries } from '../raw-series.ts';
import { cellProblem, type TextTable } from '../text-table.ts';
import { fromSeveralYears, stampSeconds } from '../typical-year.ts';
import type { WeatherOptions } from '../weather-options.ts';
import { placeWith } from './place-with.ts';
import { readRows, type WantedColumn, wantedColumn } from './read-rows.ts';
import { trimmedCells } from './table-rows.ts';

/**
 * TMY3: a line of place, a header, then hours named by their end, 01:00 to 24:00 local standard time.
 *
 * Air values hold at the end of the hour, irradiance is the mean over it; -9900 is "no reading".
 *
 * Source: S. Wilcox and W. Marion, "Users Manual for TMY3 Data Sets", NREL/TP-581-43156, 2008,
 * tables 1-1 to 1-3 (from memory).
 */
export function readTmy3(
  table: TextTable,
  options: WeatherOptions,
  problems: Problem[],
): RawSeries | null {
  const place = trimmedCells(table, 0, problems);
  const [code = '', name = '', state = '', zone, latitude, longitude, elevation] = place;
  const ahead = Number(zone || 'none');
  if (!(ahead >= -13 && ahead <= 14)) {
    problems.push(
      cellProblem(
        table,
        { line: 1, cell: 3 },
        {
          where: 'time zone',
          expected: 'hours ahead of UTC in the fourth cell of line 1',
          got: zone === undefined ? 'nothing' : `"${zone}"`,
        },
      ),
    );
    return null;
  }
  const names = trimmedCells(table, 1, problems);
  const stamps = table.lines.slice(2).map((line) => STAMP.exec(line)?.[3] ?? '');
  const typical = fromSeveralYears(stamps.filter((year) => year !== '').map(Number));
  const rows = readRows(
    table,
    {
      from: 2,
      to: table.lines.length,
      cells: names.length,
      time: (cells) => {
        const found = STAMP.exec(`${cells[0]},${cells[1]}`);
        if (found === null) return STAMP_EXPECTED;
        const [month, day, year, hour, minute] = found.slice(1).map(Number);
        const at = { year: year!, month: month!, day: day!, hour: hour!, minute: minute! };
        const seconds = stampSeconds(at, typical);
        return seconds === null ? STAMP_EXPECTED : seconds - ahead * 3600;
      },
      timeCells: [0, 1],
      timeName: 'date and time',
      wanted: wantedOf(names, options),
      decimalComma: false,
      missing: ['-9900', '-9900.00'],
    },
    problems,
  );
  const number = (text: string | undefined) => Number(text || 'none');
  const own = {
    title: [name, state].filter((part) => part !== '').join(', ') || `station ${code}`,
    latitude: number(latitude),
    longitude: number(longitude),
    elevation: number(elevation),
  };
  return {
    ...rows,
    table,
    place: placeWith(own, options),
    typical,
    stamps: { interval: 'ending', spotDelay: 0, airIsMean: false },
    pressureAtSeaLevel: false,
  };
}

function wantedOf(names: readonly string[], options: WeatherOptions): WantedColumn[] {
  const wanted: WantedColumn[] = [];
  for (const [quantity, name, factor] of COLUMNS) {
    const cell = names.findIndex((header) => header.toLowerCase().startsWith(name.toLowerCase()));
    if (cell < 0 || options.leaveOut?.includes(quantity)) continue;
    const column = wantedColumn(quantity, cell, name);
    wanted.push(factor === 1 ? column : { ...column, convert: (value) => value * factor });
  }
  return wanted;
}

/** Quantity, header and factor to the quantity's own unit. */
const COLUMNS: readonly (readonly [Quantity, string, number])[] = [
  ['temperature', 'Dry-bulb (C)', 1],
  ['relative humidity', 'RHum (%)', 1],
  ['dew point', 'Dew-point (C)', 1],
  ['pressure', 'Pressure (mbar)', 100],
  ['wind speed', 'Wspd (m/s)', 1],
  ['wind direction', 'Wdir (degrees)', 1],
  ['global horizontal', 'GHI (W/m^2)', 1],
  ['direct normal', 'DNI (W/m^2)', 1],
  ['diffuse horizontal', 'DHI (W/m^2)', 1],
];
const STAMP = /^\s*(\d{1,2})\/(\d{1,2})\/(\d{4})\s*,\s*(\d{1,2}):(\d\d)/;
const STAMP_EXPECTED = 'a date and time as MM/DD/YYYY,HH:MM';
