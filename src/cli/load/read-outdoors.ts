import type { WeatherOptions } from '../../weather/weather-options.ts';
import type { Io } from '../io.ts';
import type { BesideFile } from '../weather-options.ts';
import { MOST_DATA, MOST_SCENARIO } from './load-scenario.ts';

/** Read an outdoor file with what was said beside it. */
export async function readOutdoors(io: Io, path: string, { map, ...beside }: BesideFile) {
  const { readWeather } = await import('../../weather/read/read-weather.ts');
  const options: WeatherOptions = { ...beside, ...(map && { columns: await columnMap(io, map) }) };
  return readWeather(await io.readText(path, MOST_DATA), path, options);
}

async function columnMap(io: Io, path: string) {
  const { readColumnMap } = await import('./read-column-map.ts');
  return readColumnMap(await io.readText(path, MOST_SCENARIO), path);
}
