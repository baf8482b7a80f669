import type { PlanMeasures } from '../measures/plan-measures.ts';
import { figureText } from '../units/figure-text.ts';

/** Two rooms, or a room and outdoors, and the air that passes between them both ways. [L/s] */
export interface AirPair {
  readonly ends: readonly [string, string];
  readonly forth: number;
  readonly back: number;
}

/** The flows of air worth a line, the largest first, and what is left out. */
export interface AirPairs {
  readonly told: readonly AirPair[];
  /** Nothing where all are told. */
  readonly leftOut: string;
}

/** Flows between the same two ends side by side; small ones are only counted. */
export function airPairs({
  air_flows,
  outdoor_air,
}: Pick<PlanMeasures, 'air_flows' | 'outdoor_air'>): AirPairs {
  const pairs: AirPair[] = [];
  const met = new Set<string>();
  const key = (from: string, to: string): string => JSON.stringify([from, to]);
  const flows = new Map(air_flows.map(({ from, to, l_per_s }) => [key(from, to), l_per_s]));
  for (const { from, to, l_per_s } of air_flows) {
    if (met.has(key(to, from))) continue;
    met.add(key(from, to));
    pairs.push({ ends: [from, to], forth: l_per_s, back: flows.get(key(to, from)) ?? 0 });
  }
  const larger = ({ forth, back }: AirPair): number => Math.max(forth, back);
  const least = SMALL * outdoor_air.l_per_s;
  const told = pairs
    .filter((pair) => larger(pair) >= least)
    .sort((a, b) => larger(b) - larger(a))
    .slice(0, MOST);
  const rest = pairs.filter((pair) => !told.includes(pair)).map(larger);
  return { told, leftOut: leftOutWords(rest) };
}

function leftOutWords(rest: readonly number[]): string {
  if (rest.length === 0) return '';
  const most = figureText(Math.ceil(10 * Math.max(...rest)) / 10, 1);
  const what = rest.length === 1 ? 'One smaller pair is' : `${rest.length} smaller pairs are`;
  return `${what} left out, with ${most} L/s at most.`;
}

/** Of all air from outdoors. [-] */
const SMALL = 0.02;
/** Lines of the table. */
const MOST = 20;
