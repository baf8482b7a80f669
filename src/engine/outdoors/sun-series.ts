import type { Weather } from '../../weather/weather.ts';

/** Irradiances over even intervals, each of which holds a whole number of control steps. */
export interface SunSeries {
  /** Instant at which the first interval begins. [s UTC] */
  readonly start: number;
  /** Length of an interval. [s] */
  readonly step: number;
  readonly count: number;
  /** [W/m2] */
  readonly directNormal: Float64Array;
  /** [W/m2] */
  readonly diffuseHorizontal: Float64Array;
}

/**
 * The weather's irradiances as they are where every control step lies within one of its intervals;
 * otherwise their means over the control steps, by overlap.
 *
 * @param dt    control step [s]
 * @param from  an instant at which a control step begins [s UTC]
 */
export function sunSeries(weather: Weather, dt: number, from: number): SunSeries {
  const { start, step, count, directNormal, diffuseHorizontal } = weather;
  if (step % dt === 0 && (from - start) % dt === 0) {
    return { start, step, count, directNormal, diffuseHorizontal };
  }
  const first = from - Math.ceil((from - start) / dt) * dt;
  const steps = Math.floor((start + count * step - first) / dt);
  return {
    start: first,
    step: dt,
    count: steps,
    directNormal: overlapMeans(weather, directNormal, first, dt, steps),
    diffuseHorizontal: overlapMeans(weather, diffuseHorizontal, first, dt, steps),
  };
}

function overlapMeans(
  { start, step, count }: Weather,
  column: Float64Array,
  first: number,
  dt: number,
  steps: number,
): Float64Array {
  const means = new Float64Array(steps);
  for (let s = 0; s < steps; s++) {
    const from = first + s * dt;
    let sum = 0;
    let time = 0;
    for (let k = Math.max(0, Math.floor((from - start) / step)); k < count; k++) {
      const begin = Math.max(from, start + k * step);
      const end = Math.min(from + dt, start + (k + 1) * step);
      if (end <= begin) break;
      sum += column[k]! * (end - begin);
      time += end - begin;
    }
    means[s] = time > 0 ? sum / time : 0;
  }
  return means;
}
