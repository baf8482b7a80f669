import type { Weather } from '../../weather/weather.ts';
import type { Division } from './span-of.ts';

/** Share of the withheld hours in which it was colder or warmer outdoors than ever in the fitted part. [-] */
export function beyondFitted(
  { temperature, start, step }: Weather,
  { start: from, hours, withheld }: Division,
): number {
  const at = (hour: number): number => Math.max(0, Math.round((from + hour * 3600 - start) / step));
  const fitted = temperature.slice(at(0), at(withheld)).sort();
  const later = temperature.slice(at(withheld), at(hours));
  const [least, most] = [fitted[0], fitted.at(-1)];
  if (least === undefined || most === undefined || later.length === 0) return 0;
  return later.filter((t) => t < least || t > most).length / later.length;
}
