import type { Site } from '../../home/home.ts';
import type { InputProblems } from '../../units/problem.ts';
import { readWeather } from '../../weather/read/read-weather.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import type { Finding } from '../unplaced-problem.ts';
import type { Defaults } from './defaults.ts';

export type Place = Pick<Site, 'latitude' | 'longitude' | 'elevation'>;

/** Where the home stands; the weather's own place where the scenario does not say. */
export function sitePlace(
  data: ScenarioData,
  files: ReadonlyMap<string, string>,
  defaults: Defaults,
  refuse: (found: readonly Finding[]) => InputProblems,
): Place {
  const { latitude, longitude, elevation } = data.site ?? {};
  if (latitude !== undefined && longitude !== undefined && elevation !== undefined) {
    return { latitude, longitude, elevation };
  }
  const text = files.get(data.weather);
  if (text === undefined) {
    const expected = 'latitude, longitude and elevation, or the weather file to take them from';
    throw refuse([{ path: ['site'], expected }]);
  }
  const station = stationOf(text, data.weather, files);
  const number = (key: keyof Place, given: number | undefined) => {
    const value = station[key];
    return defaults.number(['site', key], given, {
      value,
      low: value,
      high: value,
      source: STATION,
    });
  };
  return {
    latitude: number('latitude', latitude),
    longitude: number('longitude', longitude),
    elevation: number('elevation', elevation),
  };
}

/** Where the weather was observed, read once for all plans that share their files. */
function stationOf(text: string, file: string, files: ReadonlyMap<string, string>): Place {
  const before = stations.get(files);
  if (before?.text === text) return before.place;
  const { latitude, longitude, elevation } = readWeather(text, file);
  const place = { latitude, longitude, elevation };
  stations.set(files, { text, place });
  return place;
}

/** By the files that plans were handed; the text too, in case a file is exchanged. */
const stations = new WeakMap<
  ReadonlyMap<string, string>,
  { readonly text: string; readonly place: Place }
>();
const STATION = 'the place of the weather file';
