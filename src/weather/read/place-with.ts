import type { Place } from '../raw-series.ts';
import type { WeatherOptions } from '../weather-options.ts';

/** What the file says of its place, overruled by what the person says. */
export function placeWith(own: Place, options: WeatherOptions): Place {
  return {
    title: options.title ?? own.title,
    latitude: options.latitude ?? own.latitude,
    longitude: options.longitude ?? own.longitude,
    elevation: options.elevation ?? own.elevation,
  };
}

/** A file that says nothing of its place. */
export const NOWHERE: Place = {
  title: '',
  latitude: Number.NaN,
  longitude: Number.NaN,
  elevation: Number.NaN,
};
