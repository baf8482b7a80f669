import type { EvenSteps } from '../onto-steps.ts';

/** One stretch in which an excess died away. */
export interface Decay {
  /** [s UTC] */
  readonly start: number;
  readonly minutes: number;
  /** How fast: the excess falls by this share of itself. [1/h] */
  readonly rate: number;
}

/** How an excess must fall to count as a decay. */
export interface DecayRule {
  /** Least excess at the start; in the unit of the series. */
  readonly least: number;
  /** Share of the start at which the fit ends, where noise and sources begin to matter. [-] */
  readonly until: number;
  /** Least length. [s] */
  readonly lasts: number;
}

/**
 * Stretches in which an excess over a steady level falls as in a well-mixed room without a source:
 * by the same share in equal times. A straight line through its logarithm gives the rate; a stretch
 * counts where the line fits (R2 of 0.97) and both halves fall alike, so that a window opened half
 * way does not.
 *
 * @param excess  one a step; NaN where unknown
 */
export function decaysIn(excess: Float64Array, steps: EvenSteps, rule: DecayRule): Decay[] {
  const found: Decay[] = [];
  const fewest = Math.max(FEWEST, Math.ceil(rule.lasts / steps.step) + 1);
  let k = 0;
  while (k < excess.length) {
    const end = fallsUntil(excess, k, rule);
    if (end - k >= fewest) {
      const rate = rateOf(excess, k, end, steps.step);
      if (rate !== null) {
        const start = steps.start + k * steps.step;
        found.push({ start, minutes: ((end - 1 - k) * steps.step) / 60, rate });
      }
    }
    k = Math.max(k + 1, end);
  }
  return found;
}

/** Step after the last of a fall that begins at k; k where none begins. */
function fallsUntil(excess: Float64Array, k: number, { least, until }: DecayRule): number {
  const top = excess[k]!;
  if (!(top >= least) || excess[k - 1]! > top) return k;
  if (!(excess[k + 1]! < top)) return k;
  let end = k + 1;
  while (excess[end]! < excess[end - 1]! * (1 + WOBBLE) && excess[end]! > top * until) end++;
  return end;
}

/** Rate of a fall, null where it does not go by equal shares. */
function rateOf(excess: Float64Array, from: number, to: number, step: number): number | null {
  const whole = line(excess, from, to);
  const middle = (from + to) >> 1;
  const [first, second] = [line(excess, from, middle + 1), line(excess, middle, to)];
  const alike = first.slope / second.slope;
  if (whole.fit < LEAST_FIT || !(alike > 1 / ALIKE && alike < ALIKE)) return null;
  return (-whole.slope * 3600) / step;
}

/** Least squares of the logarithm against the number of the step. */
function line(excess: Float64Array, from: number, to: number) {
  const n = to - from;
  let [sx, sy, sxx, sxy, syy] = [0, 0, 0, 0, 0];
  for (let k = 0; k < n; k++) {
    const y = Math.log(excess[from + k]!);
    sx += k;
    sy += y;
    sxx += k * k;
    sxy += k * y;
    syy += y * y;
  }
  const [cxx, cxy, cyy] = [sxx - (sx * sx) / n, sxy - (sx * sy) / n, syy - (sy * sy) / n];
  return { slope: cxy / cxx, fit: cyy > 0 ? (cxy * cxy) / (cxx * cyy) : 0 };
}

const FEWEST = 5;
const LEAST_FIT = 0.97;
const ALIKE = 1.8;
const WOBBLE = 0.02;
