import type { Assumed } from '../../home/notices.ts';

/** A number of the scenario that may be otherwise. */
export interface DoubtfulInput {
  /** Where it stands, as an RFC 6901 pointer. */
  readonly path: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly source: string;
  /** Where it stands, if not in the baseline and the plan alike, such as what a plan's device is. */
  readonly only?: 'baseline' | 'plan';
}

/**
 * Of the values that nobody gave, those worth trying low and high.
 *
 * Left out are words, numbers without a range, compass directions and storeys, whose ends mean
 * nothing, and what cannot move heat, water or money, such as carbon and particles. The others are
 * taken by kind, in the order of `KINDS`: the widest range of each kind, then the second widest of
 * each, and so on; within a kind all have one unit. Only then come those of no kind, widest range
 * over its larger end first.
 *
 * @param baseline, plan  what was assumed in each
 * @param most  how many at most
 */
export function doubtfulInputs(
  baseline: readonly Assumed[],
  plan: readonly Assumed[],
  most: number,
): DoubtfulInput[] {
  const both = new Set(baseline.map(({ path }) => path).filter((path) => has(plan, path)));
  const of = (list: readonly Assumed[], only: 'baseline' | 'plan'): DoubtfulInput[] =>
    list.flatMap(({ path, value, low, high, source }) => {
      if (typeof value !== 'number' || low === null || high === null || low >= high) return [];
      if (NO_MATTER.test(path) || (both.has(path) && only === 'plan')) return [];
      return [{ path, value, low, high, source, ...(!both.has(path) && { only }) }];
    });
  const inputs = [...of(baseline, 'baseline'), ...of(plan, 'plan')];
  const kindOf = ({ path }: DoubtfulInput) => KINDS.findIndex((kind) => kind.test(path));
  const ranked = KINDS.flatMap((_, kind) =>
    widestFirst(
      inputs.filter((input) => kindOf(input) === kind),
      ({ low, high }) => high - low,
    ).map((input, turn) => ({ input, turn })),
  ).sort((a, b) => a.turn - b.turn); // keeps the order of kinds within a turn
  const rest = widestFirst(
    inputs.filter((input) => kindOf(input) < 0),
    ({ low, high }) => (high - low) / Math.max(Math.abs(low), Math.abs(high)),
  );
  return [...ranked.map(({ input }) => input), ...rest].slice(0, Math.max(0, most));
}

const has = (list: readonly Assumed[], path: string): boolean =>
  list.some((other) => other.path === path);

const widestFirst = (
  inputs: readonly DoubtfulInput[],
  width: (input: DoubtfulInput) => number,
): DoubtfulInput[] => inputs.toSorted((a, b) => width(b) - width(a) || (a.path < b.path ? -1 : 1));

/** What as a rule moves damp and its cost most, most first. */
const KINDS: readonly RegExp[] = [
  /^\/home\/leakage\//,
  /^\/household\/activities\/\d+\/water$/,
  /cold spot factor$/,
  /^\/home\/build\/wall u-value$/,
  /^\/sensors\/humidity\/bias$/,
  /^\/devices\/[^/]+\/target$/,
  /^\/devices\/[^/]+\/power$/,
  /^\/devices\/[^/]+\/(?:label|flow)$/,
  /^\/money\/[^/]+\/price$/,
  /^\/heating\/(?:efficiency|cop)$/,
  /^\/heating\/setpoint$/,
  /^\/home\/background vents$/,
  /^\/household\/bodies\/\w+\/water$/,
  /^\/home\/doors\/(?:mixing|shut)$/,
  /^\/home\/build\/furnishing factor$/,
  /^\/home\/build\/(?:window|roof|floor) u-value$/,
  /^\/money\/discount rate$/,
];

const NO_MATTER =
  /\/(?:carbon|co2|tvoc|tvoc share|particles|deposition|penetration|pm25|paint|clean air|faces|storey)(?:\/|$)/;
