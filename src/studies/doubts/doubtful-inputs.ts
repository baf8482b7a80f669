import type { Assumed } from '../../home/notices.ts';
import { canMatter, inputRank } from '../../scenario/edits/input-kinds.ts';

/** A number of the scenario that may be otherwise. */
export interface DoubtfulInput {
  /** RFC 6901 pointer to the input. */
  readonly path: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly source: string;
  /** Scenario that alone has the input, such as the plan with its device; absent where both have it. */
  readonly only?: 'baseline' | 'plan';
}

/**
 * Assumed values worth trying low and high.
 *
 * Left out are words, numbers without a range, compass directions and storeys, whose ends mean
 * nothing, and what cannot move heat, water or money, such as carbon, and particles unless asked about. The others are
 * taken by kind, in the order of `inputRank`: the widest range of each kind, then the second widest of
 * each, and so on; within a kind all have one unit. Only then come those of no kind, widest range
 * over its larger end first.
 *
 * @param baseline, plan  what was assumed in each
 * @param most  how many at most
 * @param air   whether the answer is about what the air carries too
 */
export function doubtfulInputs(
  baseline: readonly Assumed[],
  plan: readonly Assumed[],
  most: number,
  air = false,
): DoubtfulInput[] {
  // What a plan changes keeps what it sets: the same number put into both would undo the change.
  const both = new Set(
    baseline.filter((row) => has(plan, row.path, row.value)).map(({ path }) => path),
  );
  const of = (list: readonly Assumed[], only: 'baseline' | 'plan'): DoubtfulInput[] =>
    list.flatMap(({ path, value, low, high, source }) => {
      if (typeof value !== 'number' || low === null || high === null || low >= high) return [];
      if (!canMatter(path, air) || (both.has(path) && only === 'plan')) return [];
      return [{ path, value, low, high, source, ...(!both.has(path) && { only }) }];
    });
  const inputs = [...of(baseline, 'baseline'), ...of(plan, 'plan')];
  const ranks = new Map(inputs.map((input) => [input, inputRank(input.path)]));
  const ranksThere = [...new Set(ranks.values())].filter((rank) => rank !== null).toSorted(upwards);
  const ranked = ranksThere
    .flatMap((rank) =>
      widestFirst(
        inputs.filter((input) => ranks.get(input) === rank),
        ({ low, high }) => high - low,
      ).map((input, turn) => ({ input, turn })),
    )
    .sort((a, b) => a.turn - b.turn); // keeps the order of ranks within a turn
  const rest = widestFirst(
    inputs.filter((input) => ranks.get(input) === null),
    ({ low, high }) => (high - low) / Math.max(Math.abs(low), Math.abs(high)),
  );
  return [...ranked.map(({ input }) => input), ...rest].slice(0, Math.max(0, most));
}

const has = (list: readonly Assumed[], path: string, value: Assumed['value']): boolean =>
  list.some((other) => other.path === path && other.value === value);

const widestFirst = (
  inputs: readonly DoubtfulInput[],
  width: (input: DoubtfulInput) => number,
): DoubtfulInput[] => inputs.toSorted((a, b) => width(b) - width(a) || (a.path < b.path ? -1 : 1));

const upwards = (a: number, b: number): number => a - b;
