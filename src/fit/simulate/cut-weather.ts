import type { Weather } from '../../weather/weather.ts';

/**
 * The stretch of a weather series that a run needs, with its own days before it, so that what is laid
 * out for all of it is laid out for no more. A series that closes on itself stays whole where the
 * stretch runs over its ends.
 *
 * @param from, to  [s UTC]
 */
export function cutWeather(weather: Weather, from: number, to: number): Weather {
  const { start, step, count } = weather;
  const first = Math.max(0, Math.floor((from - start) / step));
  const last = Math.min(count, Math.ceil((to - start) / step) + 1);
  const outside = from < start || to > start + count * step;
  if (last <= first || (outside && weather.periodic)) return weather;
  const cut = (column: Float64Array): Float64Array => column.slice(first, last);
  const entries = Object.entries(weather).map(([key, value]) => [
    key,
    value instanceof Float64Array ? cut(value) : value,
  ]);
  return {
    ...(Object.fromEntries(entries) as unknown as Weather),
    start: start + first * step,
    count: last - first,
    periodic: false,
    species: Object.fromEntries(
      Object.entries(weather.species).map(([name, column]) => [name, cut(column)]),
    ),
  };
}
