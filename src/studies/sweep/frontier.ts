import { hoursOutsideBands } from '../../measures/comfort/room-hours.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';

/** What one run comes to. */
export interface Bargain {
  /** Its number. */
  readonly run: number;
  /** [currency/year] */
  readonly money: number;
  /** Outside the bands, added up over the rooms. [h] */
  readonly hours: number;
}

/** What a run costs a year, and how long it leaves rooms outside their bands in its period. */
export const bargainOf = (
  figures: Pick<PlanMeasures, 'money' | 'rooms'>,
): Omit<Bargain, 'run'> => ({
  money: figures.money.total_per_year,
  hours: hoursOutsideBands(figures),
});

/**
 * Runs that no other beats: none is as cheap with fewer hours, or has as few hours for less money. The
 * cheapest comes first; of equal ones all stay.
 */
export function frontier<T extends Bargain>(runs: readonly T[]): T[] {
  const sorted = runs
    .filter(({ money, hours }) => Number.isFinite(money) && Number.isFinite(hours))
    .sort((a, b) => a.money - b.money || a.hours - b.hours || a.run - b.run);
  const kept: T[] = [];
  for (const run of sorted) {
    const best = kept.at(-1);
    const equal = best?.money === run.money && best.hours === run.hours;
    if (best === undefined || run.hours < best.hours || equal) kept.push(run);
  }
  return kept;
}

/** The bend of a frontier. */
export interface Knee<T extends Bargain> {
  readonly at: T;
  /** Money for each hour less from the cheapest run up to the bend. [currency/h] */
  readonly before: number;
  /** Money for each hour less from the bend to the run with fewest hours. [currency/h] */
  readonly after: number;
}

/**
 * Where a frontier bends most: the run farthest below the straight line between its two ends, both
 * scales cut to the same length. Up to it an hour less is cheap, beyond it dear.
 *
 * @param front  as `frontier` gives it
 * @returns null where no run lies below that line
 */
export function knee<T extends Bargain>(front: readonly T[]): Knee<T> | null {
  const [first, last] = [front[0], front.at(-1)];
  if (first === undefined || last === undefined) return null;
  const wide = last.money - first.money;
  const high = first.hours - last.hours;
  if (!(wide > 0 && high > 0)) return null;
  const below = ({ money, hours }: T) =>
    1 - (money - first.money) / wide - (hours - last.hours) / high;
  const at = front.reduce((best, run) => (below(run) > below(best) ? run : best));
  if (!(below(at) > LEAST)) return null;
  return {
    at,
    before: (at.money - first.money) / (first.hours - at.hours),
    after: (last.money - at.money) / (at.hours - last.hours),
  };
}

/** Distance below the line that is more than rounding, as a share of the scales. */
const LEAST = 1e-9;
