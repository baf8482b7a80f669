import type { Site } from '../home/home.ts';
import type { Notice } from '../home/notices.ts';
import type { Weather } from '../weather/weather.ts';

/** A line where the weather is of a place with another climate than the home's: far north, south, higher or lower. */
export function weatherElsewhere(
  site: Pick<Site, 'latitude' | 'elevation'>,
  weather: Pick<Weather, 'latitude' | 'elevation'>,
): Notice[] {
  const north = weather.latitude - site.latitude;
  const up = weather.elevation - site.elevation;
  const off = [
    ...(Math.abs(north) < FAR
      ? []
      : [`${Math.abs(north).toFixed(1)}° further ${north < 0 ? 'south' : 'north'}`]),
    ...(Math.abs(up) < HIGH ? [] : [`${Math.abs(up).toFixed(0)} m ${up < 0 ? 'lower' : 'higher'}`]),
  ];
  if (off.length === 0) return [];
  const text =
    `The weather is of a place ${off.join(' and ')} than the home: heat, damp, sun and money are those of the ` +
    `climate there${Math.abs(up) < HIGH ? '' : `, which by its height alone is some ${Math.abs(LAPSE * up).toFixed(0)} K ${up < 0 ? 'warmer' : 'colder'}`}.`;
  return [{ id: 'weather-elsewhere', text }];
}

/** Degrees of latitude that make another climate. */
export const FAR = 2;
/** Difference in height that is 2 K. [m] */
const HIGH = 300;
/** Standard atmosphere (ISO 2533:1975). [K/m] */
const LAPSE = 0.0065;
