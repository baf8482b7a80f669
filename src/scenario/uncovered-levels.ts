import { isoTime } from '../units/iso-time.ts';
import type { PreparedPlan } from './prepared.ts';

/**
 * Files of outdoor levels that do not reach from the start of a period to its end.
 *
 * @param period  first instant [s UTC] and length [h]
 */
export function uncoveredLevels(
  { home }: Pick<PreparedPlan, 'home'>,
  { start, hours }: { readonly start: number; readonly hours: number },
): Uncovered[] {
  const end = start + hours * 3600;
  return home.species.flatMap(({ name, outdoorSeries: series }) => {
    if (series === undefined) return [];
    const last = series.start + series.values.length * series.step;
    if (series.start <= start && last >= end) return [];
    const path = ['air', 'own species', name, 'outdoors'];
    const expected = `levels for the whole period, ${isoTime(start)} to ${isoTime(end)}`;
    return [{ path, expected, got: `${isoTime(series.start)} to ${isoTime(last)}` }];
  });
}

interface Uncovered {
  readonly path: readonly string[];
  readonly expected: string;
  readonly got: string;
}
