import type { Weather } from '../weather.ts';
import type { DegreeDayKind } from './degree-days-by-mean.ts';

/**
 * Degree-days by integration over the series, straight lines between its instants. [K d]
 *
 * Exact for such lines: a step that crosses the base counts only on its own side of it. A series that
 * does not close on itself holds its last value over the last step.
 *
 * @param weather  temperatures and their spacing
 * @param base  [°C]
 */
export function degreeDaysHourly(
  weather: Pick<Weather, 'temperature' | 'step' | 'periodic'>,
  base: number,
  kind: DegreeDayKind = 'heating',
): number {
  const { temperature, step, periodic } = weather;
  const n = temperature.length;
  const sign = kind === 'heating' ? 1 : -1;
  let sum = 0;
  for (let k = 0; k < n; k++) {
    const from = sign * (base - temperature[k]!);
    const next = k + 1 < n ? k + 1 : periodic ? 0 : k;
    sum += meanAboveZero(from, sign * (base - temperature[next]!));
  }
  return (sum * step) / 86_400;
}

/** Mean of the positive part of a straight line from a to b. */
function meanAboveZero(a: number, b: number): number {
  if (a >= 0 && b >= 0) return (a + b) / 2;
  if (a <= 0 && b <= 0) return 0;
  const top = Math.max(a, b);
  return (top * top) / (2 * Math.abs(a - b));
}
