import { allOf } from '../run-failures.ts';

/** What a search asks about values between two ends. */
export interface Search<T> {
  readonly low: number;
  readonly high: number;
  /** Width to which the value is enclosed. */
  readonly tolerance: number;
  /** What comes of a value. */
  readonly at: (value: number) => Promise<T>;
  /** Whether that is good enough. From some value on everything is, or nothing is. */
  readonly holds: (tried: T) => boolean;
}

/** A value that was tried, and what came of it. */
export interface Tried<T> {
  readonly value: number;
  readonly tried: T;
  readonly holds: boolean;
}

/** The least value that holds. */
export interface Least<T> {
  /** It was tried itself; the true one lies below it by no more than the tolerance. Null for none. */
  readonly found: Tried<T> | null;
  /** Everything that was tried, by value. */
  readonly all: readonly Tried<T>[];
}

/**
 * The least value between two ends from which on something holds, by halving the stretch in which it
 * begins to. Both ends are tried first, at once; where it does not hold at the high end there is no
 * such value.
 *
 * @throws RangeError for ends in disorder or a tolerance that is not above 0
 */
export async function leastThatHolds<T>(search: Search<T>): Promise<Least<T>> {
  const { low, high, tolerance, at, holds } = search;
  if (!(low < high && tolerance > 0)) {
    throw new RangeError('leastThatHolds: needs low < high and a tolerance above 0');
  }
  const all: Tried<T>[] = [];
  const attempt = async (value: number): Promise<Tried<T>> => {
    const tried = await at(value);
    const one = { value, tried, holds: holds(tried) };
    all.push(one);
    return one;
  };
  const [bottom, top] = await allOf([attempt(low), attempt(high)]);
  let found = bottom!.holds ? bottom! : top!.holds ? top! : null;
  let fails = bottom!.value;
  while (found !== null && found !== bottom && found.value - fails > tolerance * (1 + SLACK)) {
    const middle = await attempt(Number(((fails + found.value) / 2).toPrecision(12)));
    if (middle.holds) found = middle;
    else fails = middle.value;
  }
  return { found, all: all.sort((a, b) => a.value - b.value) };
}

/** Rounding that a width may be off by, as a share of it. */
const SLACK = 1e-9;
