import { type Coordinates, furtherWords } from '../../units/coordinates.ts';
import type { Weather } from '../../weather/weather.ts';
import { FAR } from '../notices/weather-elsewhere.ts';

/**
 * What has to be known of weather that is invented, or of a place far from the home: whose it is, how
 * far off, and how to get real one. Null for weather that is neither.
 */
export function otherWeather(
  place: Coordinates,
  { title, latitude, sun }: Pick<Weather, 'title' | 'latitude' | 'sun'>,
): string | null {
  const invented = sun === 'invented';
  const off = latitude - place.latitude;
  if (!invented && Math.abs(off) < FAR) return null;
  const far = Math.abs(off) < SAME ? 'as far north' : furtherWords(off);
  const where = `${invented ? 'an invented town' : 'a place'} ${far} (${title}, latitude ${latitude.toFixed(1)})`;
  return (
    `The weather is not that of this home: it is that of ${where}. ` +
    'For real weather: roombalance weather fetch, or roombalance weather import of a file in ' +
    'TMY3, PVGIS, ISD-Lite or any CSV, and its name behind "weather:".'
  );
}

/** Degrees of latitude that are none. */
const SAME = 0.05;
