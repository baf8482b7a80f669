import type { Coordinates } from '../../units/coordinates.ts';
import { isoTime } from '../../units/iso-time.ts';
import { InputProblems } from '../../units/problem.ts';
import { readWeather } from '../read/read-weather.ts';
import type { Weather } from '../weather.ts';
import { ARCHIVE, ARCHIVE_COLUMNS } from './weather-service.ts';

/** Hourly means of the sun on the horizontal, each over the hour that begins. [W/m2] */
export interface HorizontalSun {
  readonly global: Float64Array;
  readonly diffuse: Float64Array;
}

/**
 * A year of hours from the archive's answer.
 *
 * Irradiances there are means of the hour before the stamp; here they stand at the hour's beginning.
 *
 * @param text    the answer, JSON
 * @param origin  what to call it in messages
 * @param sun     better irradiances than the archive's own, of the same hours
 * @throws InputProblems where it is not the year that was asked for
 */
export function readArchive(
  text: string,
  origin: string,
  asked: { readonly place: Coordinates; readonly year: number },
  sun: HorizontalSun | null = null,
): Weather {
  const { elevation, columns } = parse(text, origin);
  const hours = (Date.UTC(asked.year + 1, 0) - Date.UTC(asked.year, 0)) / HOUR;
  const first = columns[0]!;
  const start = Date.parse(`${first[0]}Z`);
  if (start !== Date.UTC(asked.year, 0) || first.length < hours + 1) {
    const got = `${first.length} hours from ${String(first[0])}`;
    throw refused(origin, `the hours of ${asked.year} and one more`, got);
  }
  const lines = Array.from({ length: hours }, (_, k) => {
    const cells = ARCHIVE_COLUMNS.flatMap(([, , name, factor], c) => {
      if (!SUN.includes(name)) return [cell(columns[c + 1]![k], factor)];
      return sun === null ? [cell(columns[c + 1]![k + 1], factor)] : [];
    });
    const better = sun === null ? [] : [sun.global[k]!, sun.diffuse[k]!];
    return [isoTime((start + k * HOUR) / 1000), ...cells, ...better].join(',');
  });
  const names = ARCHIVE_COLUMNS.map(([, , name]) => name as string);
  const header = [
    ...['time', ...names.filter((name) => sun === null || !SUN.includes(name))],
    ...(sun === null ? [] : ['global horizontal', 'diffuse horizontal']),
  ].join(',');
  const title = `${ARCHIVE.name}, ${asked.year}`;
  const head = [`# title: ${title}`, `# elevation: ${elevation}`];
  return readWeather([...head, header, ...lines].join('\n'), `${origin}, as CSV`, asked.place);
}

/** The columns of the answer, time first, and the elevation it holds for. [m] */
function parse(text: string, origin: string) {
  let answer: unknown;
  try {
    answer = JSON.parse(text);
  } catch {
    throw refused(origin, 'JSON', `${text.length} characters that are none, or are cut off`);
  }
  const { hourly, hourly_units: units, elevation } = mapping(answer);
  const problem = (name: string, expected: string, got: unknown) =>
    refused(origin, `${expected} in ${name}`, got === undefined ? 'nothing' : JSON.stringify(got));
  if (typeof elevation !== 'number') throw problem('elevation', 'a number of metres', elevation);
  const columns = ['time', ...ARCHIVE_COLUMNS.map(([name]) => name)].map((name) => {
    const values = mapping(hourly)[name];
    if (!Array.isArray(values)) throw problem(`hourly.${name}`, 'a list', values);
    return values as readonly unknown[];
  });
  for (const [name, unit] of ARCHIVE_COLUMNS) {
    const got = mapping(units)[name];
    if (got !== unit) throw problem(`hourly_units.${name}`, `"${unit}"`, got);
  }
  const lengths = new Set(columns.map((values) => values.length));
  if (lengths.size > 1) {
    throw refused(origin, 'lists of one length', [...lengths].join(' and ').concat(' hours'));
  }
  return { elevation, columns };
}

const mapping = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};

/** A reading in the layout's unit; empty where there is none. */
function cell(value: unknown, factor: number): string {
  if (value === null || value === undefined) return '';
  return typeof value === 'number'
    ? String(value * factor)
    : String(value).replaceAll(/[,\n]/g, ' ');
}

function refused(file: string, expected: string, got: string): InputProblems {
  return new InputProblems([{ file, line: 0, column: 0, where: '', expected, got, hint: '' }]);
}

const SUN: readonly string[] = ['direct normal', 'diffuse horizontal'];
const HOUR = 3_600_000;
