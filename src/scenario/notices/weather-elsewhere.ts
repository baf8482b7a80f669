import type { Site } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { degreesEast, furtherWords } from '../../units/coordinates.ts';
import { andList } from '../../units/word-list.ts';
import type { Weather } from '../../weather/weather.ts';

/** A line where the weather is of a place far from the home: by latitude, longitude or height. */
export function weatherElsewhere(
  site: Pick<Site, 'latitude' | 'longitude' | 'elevation'>,
  weather: Pick<Weather, 'latitude' | 'longitude' | 'elevation'>,
): Notice[] {
  const north = weather.latitude - site.latitude;
  const east = degreesEast(weather.longitude, site.longitude);
  const up = weather.elevation - site.elevation;
  const off = [
    ...(Math.abs(north) < FAR ? [] : [furtherWords(north)]),
    ...(Math.abs(east) < WIDE
      ? []
      : [`${Math.abs(east).toFixed(0)}° further ${east < 0 ? 'west' : 'east'}`]),
    ...(Math.abs(up) < HIGH ? [] : [`${Math.abs(up).toFixed(0)} m ${up < 0 ? 'lower' : 'higher'}`]),
  ];
  if (off.length === 0) return [];
  const text =
    `The weather is of a place ${andList(off)} than the home: heat, damp, sun and money are those of the ` +
    `climate there${Math.abs(up) < HIGH ? '' : `, which by its height alone is some ${Math.abs(LAPSE * up).toFixed(0)} °C ${up < 0 ? 'warmer' : 'colder'}`}.`;
  return [{ id: 'weather-elsewhere', text }];
}

/** Some 220 km, which make another climate. [deg of latitude] */
export const FAR = 2;
/** [deg] */
const WIDE = 10;
/** Difference in height that is 2 K. [m] */
const HIGH = 300;
/** Standard atmosphere (ISO 2533:1975). [K/m] */
const LAPSE = 0.0065;
