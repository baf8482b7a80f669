import { binarySign } from '../../units/binary-sign.ts';
import type { Problem } from '../../units/problem.ts';
import { finishWeather } from '../complete/finish-weather.ts';
import type { RawSeries } from '../raw-series.ts';
import { splitLines, type TextTable } from '../text-table.ts';
import { throwProblems } from '../throw-problems.ts';
import type { Weather } from '../weather.ts';
import type { WeatherKind, WeatherOptions } from '../weather-options.ts';
import { readColumns } from './read-columns.ts';
import { readIsdLite } from './read-isd-lite.ts';
import { readOwnCsv } from './read-own-csv.ts';
import { readPvgis } from './read-pvgis.ts';
import { readTmy3 } from './read-tmy3.ts';
import { sniffKind } from './sniff-kind.ts';

/**
 * An outdoor series from the text of a file: read, checked, short gaps filled, in SI units.
 *
 * Layouts: the project's own CSV, TMY3, PVGIS typical years, ISD-Lite, and any CSV that a column
 * map describes. The layout is seen from the first lines unless the options say it.
 *
 * @param text  all of the file
 * @param file  its name, for messages
 * @throws InputProblems with everything that is wrong, each with its place
 */
export function readWeather(text: string, file: string, options: WeatherOptions = {}): Weather {
  const problems: Problem[] = [];
  const table: TextTable = { file, lines: splitLines(text), delimiter: ',' };
  const sign = binarySign(text);
  if (sign !== null || table.lines.length === 0) {
    const got = sign ?? 'nothing: the file is empty';
    throwProblems([whole(file, 'the text of a weather file', got, UNPACK)]);
  }
  const kind = options.kind ?? (options.columns === undefined ? sniffKind(table) : 'columns');
  if (kind === null) {
    throwProblems([
      { ...whole(file, LAYOUTS, `"${shorten(table.lines[0]!)}"`, MAP), line: 1, column: 1 },
    ]);
  }
  const raw = READERS[kind!](table, options, problems);
  if (raw === null) throwProblems(problems);
  return finishWeather(raw!, options, problems);
}

type Reader = (table: TextTable, options: WeatherOptions, problems: Problem[]) => RawSeries | null;

const READERS: Readonly<Record<WeatherKind, Reader>> = {
  own: readOwnCsv,
  tmy3: readTmy3,
  pvgis: readPvgis,
  'isd-lite': readIsdLite,
  columns: readColumns,
};

function whole(file: string, expected: string, got: string, hint: string): Problem {
  return { file, line: 0, column: 0, where: '', expected, got, hint };
}

const shorten = (line: string): string => (line.length > 60 ? `${line.slice(0, 57)}...` : line);

const UNPACK = 'unpack archives and export spreadsheets as CSV first';
const LAYOUTS = 'a roombalance CSV, TMY3, PVGIS typical year or ISD-Lite';
const MAP = 'any other CSV can be read with a column map';
