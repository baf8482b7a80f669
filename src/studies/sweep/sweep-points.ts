import { latinHypercube } from '../latin-hypercube.ts';
import { type Axis, countOf, nthValue, valueAtShare } from './axis.ts';

/** Settings of a sweep: one value for each of its axes. */
export interface SweepPoints {
  readonly count: number;
  /** @param k  counted from 0 */
  at(k: number): readonly number[];
}

/** Every value of each axis with every value of the others, the last axis changing fastest. */
export function gridPoints(axes: readonly Axis[]): SweepPoints {
  const counts = axes.map(countOf);
  return {
    count: counts.reduce((product, count) => product * count, 1),
    at: (k) => {
      let left = k;
      const places = counts.toReversed().map((count) => {
        const place = left % count;
        left = Math.floor(left / count);
        return place;
      });
      return axes.map((axis, d) => nthValue(axis, places.at(-1 - d)!));
    },
  };
}

/** So many points spread evenly over the axes. */
export function sampledPoints(axes: readonly Axis[], samples: number, seed: number): SweepPoints {
  const shares = latinHypercube(samples, axes.length, seed);
  return {
    count: samples,
    at: (k) => axes.map((axis, d) => valueAtShare(axis, shares[k]![d]!)),
  };
}
