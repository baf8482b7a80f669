import { clockSeconds } from '../../units/clock-seconds.ts';
import type { Problem } from '../../units/problem.ts';
import type { Quantity } from '../quantity.ts';
import type { RawSeries } from '../raw-series.ts';
import type { TextTable } from '../text-table.ts';
import type { WeatherOptions } from '../weather-options.ts';
import { NOWHERE, placeWith } from './place-with.ts';
import { readRows, type WantedColumn, wantedColumn } from './read-rows.ts';

/**
 * ISD-Lite: fixed columns without a header, UTC, most numbers times ten, -9999 for "no reading".
 *
 * The file says nothing of its place: the options must. Pressure is reduced to sea level. The sky
 * is a code: eighths up to 8, then words, which are read as the middle of what they mean.
 *
 * Source: NOAA National Centers for Environmental Information, ISD-Lite format document (from memory).
 */
export function readIsdLite(
  table: TextTable,
  options: WeatherOptions,
  problems: Problem[],
): RawSeries | null {
  const spaced: TextTable = { ...table, delimiter: ' ' };
  const rows = readRows(
    spaced,
    {
      from: 0,
      to: table.lines.length,
      cells: CELLS,
      time: (cells) => {
        const [year, month, day, hour] = cells.slice(0, 4).map(Number);
        return clockSeconds(year!, month!, day!, hour!, 0) ?? 'year, month, day and hour';
      },
      timeCells: [0, 1, 2, 3],
      timeName: 'time',
      wanted: COLUMNS.filter(({ quantity }) => !options.leaveOut?.includes(quantity)),
      decimalComma: false,
      missing: [],
    },
    problems,
  );
  return {
    ...rows,
    table: spaced,
    place: placeWith(NOWHERE, options),
    typical: false,
    stamps: { interval: 'instant', spotDelay: 0, airIsMean: false },
    pressureAtSeaLevel: true,
  };
}

function tenths(quantity: Quantity, cell: number, name: string, factor = 0.1): WantedColumn {
  return { ...wantedColumn(quantity, cell, name), convert: (value) => value * factor };
}

/** Cloud cover of a sky code. [%] */
function cloudOfCode(code: number): number {
  if (code <= 8) return code * 12.5;
  if (code === 9 || code >= 17) return 100; // sky hidden; overcast
  if (code === 10) return 50; // partly hidden
  return code <= 13 ? 43.75 : 75; // scattered, 3 to 4 eighths; broken, 5 to 7
}

const COLUMNS: readonly WantedColumn[] = [
  tenths('temperature', 4, 'air temperature'),
  tenths('dew point', 5, 'dew point'),
  tenths('pressure', 6, 'sea level pressure', 10), // tenths of hPa
  wantedColumn('wind direction', 7, 'wind direction'),
  tenths('wind speed', 8, 'wind speed'),
  { ...wantedColumn('cloud cover', 9, 'sky condition'), convert: cloudOfCode },
];
const CELLS = 10; // the two of rain, where there, are not needed
