import { type Coordinates, readCoordinates } from '../../units/coordinates.ts';
import { FIRST_YEAR } from '../../weather/services/weather-service.ts';
import { fetchWeather } from '../fetch/fetch-weather.ts';
import { requireFree } from '../fetch/require-free.ts';
import type { Io } from '../io.ts';
import { UsageError } from '../usage-error.ts';

/** What may be said about the weather wanted. */
export interface FetchOptions {
  readonly at: string;
  readonly year?: number;
  readonly typical?: true;
  readonly sun: 'archive' | 'satellite';
  readonly output?: string;
  readonly title?: string;
  readonly yes?: true;
  readonly cache: boolean;
  readonly pvgis?: string;
  readonly archive?: string;
}

/** Get weather from public services and write it as roombalance CSV. */
export async function fetchFile(io: Io, options: FetchOptions): Promise<void> {
  const { output, year = null, pvgis, archive, cache, title } = options;
  const place = placeAt(options.at);
  if (year !== null) requirePast(io, year);
  const satelliteSun = options.sun === 'satellite';
  if (satelliteSun && year === null) {
    throw new UsageError("error: option '--sun satellite' needs a --year; a typical year has it");
  }
  if (output !== undefined) {
    await requireFree(io, output);
    await io.requireWritable(output);
  }
  const addresses = { pvgis, archive };
  const wish = { place, year, satelliteSun, yes: options.yes === true, cache, addresses };
  const csv = await fetchWeather(io, { ...wish, title });
  if (output === undefined) io.out(csv);
  else await io.writeWhole(output, csv);
}

/** @throws UsageError */
function placeAt(written: string): Coordinates {
  const read = readCoordinates(written);
  if ('place' in read) return read.place;
  const { expected, got, hint } = read.refused;
  const more = hint === '' ? '' : ` (${hint})`;
  throw new UsageError(`error: option '--at <lat,lon>': expected ${expected}, got ${got}${more}`);
}

/** @throws UsageError for a year that has not ended, or that no archive has */
function requirePast(io: Io, year: number): void {
  const last = Number(io.today().slice(0, 4)) - 1;
  if (year >= FIRST_YEAR && year <= last) return;
  throw new UsageError(
    `error: option '--year <year>': expected a whole year from ${FIRST_YEAR} to ${last}, got ${year}`,
  );
}
