import type { Adjustable } from '../../scenario/edits/adjustables.ts';
import { settingWords } from '../../scenario/yaml/settings.ts';

/**
 * The value of a parameter at a place of the search: z counts prior standard deviations from the value
 * that was assumed, in the logarithm of what is above 0, in the log-odds of shares, and straight in
 * everything else. Low to high is read as a range of 95 %.
 */
export function valueAt(adjustable: Adjustable, z: number): number {
  const { scale, value } = adjustable;
  return straight(scale, bent(scale, inside(adjustable, value)) + z * priorSd(adjustable));
}

/**
 * Settings of a scenario at a place of the search, one z an adjustable.
 *
 * @param digits  significant ones of each number
 */
export function settingsAt(
  adjustables: readonly Adjustable[],
  place: readonly number[],
  digits = DIGITS,
): string[] {
  return [
    ...adjustables.flatMap(({ besides }) => besides),
    ...adjustables.flatMap((adjustable, k) => {
      const value = valueAt(adjustable, place[k]!);
      return adjustable.places.map(({ path, at }) =>
        settingWords(path, String(Number(at(value).toPrecision(digits)))),
      );
    }),
  ];
}

/** Least standard deviation that is claimed. [prior standard deviations] */
export const leastSd = (adjustable: Adjustable): number => adjustable.least / priorSd(adjustable);

/** Standard deviation that the range from low to high stands for, on the bent scale. */
function priorSd(adjustable: Adjustable): number {
  const { scale, low, high } = adjustable;
  const width = bent(scale, inside(adjustable, high)) - bent(scale, inside(adjustable, low));
  return width / (2 * TWO_SIDED);
}

/** What has no logarithm is moved inside: 0 to a part of the value, shares off 0 and 1. */
function inside({ scale, value, high }: Adjustable, x: number): number {
  if (scale === 'plain') return x;
  if (scale === 'share') return Math.min(1 - EDGE, Math.max(EDGE, x));
  return Math.max(x, NOTHING * (value > 0 ? value : high));
}

function bent(scale: Adjustable['scale'], x: number): number {
  if (scale === 'positive') return Math.log(x);
  return scale === 'share' ? Math.log(x / (1 - x)) : x;
}

function straight(scale: Adjustable['scale'], t: number): number {
  if (scale === 'positive') return Math.exp(t);
  return scale === 'share' ? 1 / (1 + Math.exp(-t)) : t;
}

/** Standard deviations from the middle to either end of a range of 95 %. */
export const TWO_SIDED = 1.96;
const EDGE = 0.02;
const NOTHING = 0.1;
const DIGITS = 10;
/** That are written into a scenario. */
export const WRITTEN_DIGITS = 4;
