import type { Weather } from '../../weather/weather.ts';
import type { Division } from './span.ts';
import { weatherOfHours } from './weather-of-hours.ts';

/** Share of the withheld hours in which it was colder or warmer outdoors than ever in the fitted part. [-] */
export function beyondFitted(weather: Weather, division: Division): number {
  const { hours, withheld } = division;
  const fitted = weatherOfHours(weather, division, 0, withheld).slice().sort();
  const later = weatherOfHours(weather, division, withheld, hours);
  const [least, most] = [fitted[0], fitted.at(-1)];
  if (least === undefined || most === undefined || later.length === 0) return 0;
  return later.filter((t) => t < least || t > most).length / later.length;
}
