import type { Weather } from '../../weather/weather.ts';
import type { Division } from './span.ts';

/** Outdoor temperatures of some hours of a log, counted from its first; fewer where the weather ends. [°C] */
export function weatherOfHours(
  { temperature, start, step }: Pick<Weather, 'temperature' | 'start' | 'step'>,
  log: Pick<Division, 'start'>,
  from: number,
  to: number,
): Weather['temperature'] {
  const at = (hour: number): number =>
    Math.max(0, Math.round((log.start + hour * 3600 - start) / step));
  return temperature.subarray(at(from), at(to));
}
