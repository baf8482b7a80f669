import type { Assumed } from '../home/remarks.ts';

/** A number of the scenario that may be otherwise. */
export interface DoubtfulInput {
  /** Where it stands, as an RFC 6901 pointer. */
  readonly path: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

/**
 * Of the values that nobody gave, those worth trying low and high.
 *
 * Left out are words, numbers without a range, and what cannot move heat, water or money: carbon,
 * carbon dioxide, particles, organic vapours and how they settle. Of the others those with the
 * widest range come first, range over the larger of its ends, so that a value known to within a
 * tenth gives way to one that may be twice as much; among equals by their place.
 *
 * @param assumed  of one plan or several; each place counts once
 * @param most     how many at most
 */
export function doubtfulInputs(assumed: readonly Assumed[], most: number): DoubtfulInput[] {
  const byPath = new Map<string, DoubtfulInput>();
  for (const { path, value, low, high, source } of assumed) {
    if (typeof value !== 'number' || low === null || high === null || low >= high) continue;
    if (NO_MATTER.test(path)) continue;
    byPath.set(path, { path, value, low, high, source });
  }
  return [...byPath.values()]
    .sort((a, b) => width(b) - width(a) || (a.path < b.path ? -1 : 1))
    .slice(0, Math.max(0, most));
}

/** 0 for a range that is a point, 1 for one that begins at 0, 2 for one from -x to x. [-] */
const width = ({ low, high }: DoubtfulInput): number =>
  (high - low) / Math.max(Math.abs(low), Math.abs(high));

const NO_MATTER =
  /\/(?:carbon|co2|tvoc|tvoc share|particles|deposition|penetration|pm25|paint|clean air)(?:\/|$)/;
