import { InputProblems } from '../../units/problem.ts';
import { sampledToMeans } from '../complete/sampled-to-means.ts';
import { splitLines } from '../text-table.ts';
import type { HorizontalSun } from './read-archive.ts';

/**
 * The sun of a year from an hourly series of PVGIS on the horizontal: readings once an hour, some
 * minutes past it, turned into means of the hour by straight lines.
 *
 * @param origin  what to call the answer in messages
 * @throws InputProblems where it is not the year that was asked for
 */
export function readPvgisSun(text: string, origin: string, year: number): HorizontalSun {
  const lines = splitLines(text);
  const head = lines.findIndex((line) => line.startsWith('time,'));
  const names = (lines[head] ?? '').split(',');
  const [beam, diffuse] = ['Gb(i)', 'Gd(i)'].map((name) => names.indexOf(name)) as [number, number];
  if (head < 0 || beam < 0 || diffuse < 0) {
    throw refused(origin, 0, 'a header with time, Gb(i) and Gd(i)', lines[head] ?? 'none');
  }
  const end = lines.findIndex((line, k) => k > head && !/^\d{8}:\d{4},/.test(line));
  const rows = lines.slice(head + 1, end < 0 ? lines.length : end).map((line) => line.split(','));
  const hours = (Date.UTC(year + 1, 0) - Date.UTC(year, 0)) / 3_600_000;
  if (rows.length !== hours)
    throw refused(origin, 0, `${hours} hours of ${year}`, `${rows.length}`);
  const minutes = Number(rows[0]![0]!.slice(-2));
  const values = (column: number) =>
    Float64Array.from(rows, (cells, k) => {
      const value = Number(cells[column] || Number.NaN);
      const expectedTime = stamp(year, k, minutes);
      if (cells[0] !== expectedTime) throw refused(origin, head + k + 2, expectedTime, cells[0]!);
      if (value >= 0) return value;
      throw refused(
        origin,
        head + k + 2,
        'irradiance of 0 W/m2 or more',
        `"${cells[column] ?? ''}"`,
      );
    });
  const means = (readings: Float64Array) => sampledToMeans(readings, minutes / 60, false);
  const around = means(values(diffuse));
  const direct = means(values(beam));
  return { global: direct.map((value, k) => value + around[k]!), diffuse: around };
}

/** "20230101:0010" for the first hour read ten minutes past. */
function stamp(year: number, hour: number, minutes: number): string {
  const text = new Date(Date.UTC(year, 0, 1, hour, minutes)).toISOString();
  return `${text.slice(0, 10).replaceAll('-', '')}:${text.slice(11, 13)}${text.slice(14, 16)}`;
}

function refused(file: string, line: number, expected: string, got: string): InputProblems {
  const column = line > 0 ? 1 : 0;
  return new InputProblems([{ file, line, column, where: '', expected, got, hint: '' }]);
}
