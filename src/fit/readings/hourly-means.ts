import type { LoggedSeries } from '../../log/log.ts';
import { longestGap } from '../../log/longest-gap.ts';
import { meansOverSteps } from '../../log/onto-steps.ts';
import { SECONDS_PER_HOUR } from '../../units/time-units.ts';

/**
 * Power that is reported on a change as a meter that is read every hour would tell it, so that each moment counts
 * alike; anything else as it is.
 */
export function hourlyMeans(series: LoggedSeries): LoggedSeries {
  const { times, reading, holdsUntil } = series;
  if (reading !== 'state') return series;
  const start = Math.ceil(times[0]! / SECONDS_PER_HOUR) * SECONDS_PER_HOUR;
  const end = holdsUntil ?? times.at(-1)!;
  const count = Math.max(0, Math.floor((end - start) / SECONDS_PER_HOUR));
  const steps = { start, step: SECONDS_PER_HOUR, count };
  const means = meansOverSteps(series, steps, longestGap(series));
  return {
    ...series,
    reading: 'mean',
    times: Float64Array.from({ length: count + 1 }, (_, k) => start + k * SECONDS_PER_HOUR),
    values: Float64Array.of(Number.NaN, ...means),
  };
}
