import { intervalsOf } from '../../log/intervals.ts';
import type { LoggedSeries } from '../../log/log.ts';
import { meansOverSteps } from '../../log/onto-steps.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Weather } from '../../weather/weather.ts';
import { meanOf } from '../statistics/misfit.ts';
import { meanOutdoors } from './heat-of-electricity.ts';

/**
 * What a meter shows on mild days, when hardly anything is heated, as a share of its mean [-]: about what
 * heats water and cooks. Null where it was read less often than every day or the log has few such days.
 */
export function mildShare(meter: LoggedSeries, weather: Weather): number | null {
  const { times } = meter;
  if (intervalsOf(meter).every > 1.5 * SECONDS_PER_DAY) return null;
  const count = Math.floor((times.at(-1)! - times[0]!) / SECONDS_PER_DAY);
  const steps = { start: times[0]!, step: SECONDS_PER_DAY, count };
  const days = meansOverSteps(meter, steps, 2 * SECONDS_PER_DAY);
  const mild = days.filter((power, day) => {
    const from = times[0]! + day * SECONDS_PER_DAY;
    return !Number.isNaN(power) && meanOutdoors(weather, from, from + SECONDS_PER_DAY) >= MILD;
  });
  if (mild.length < FEWEST) return null;
  return mild.sort()[mild.length >> 1]! / meanOf(days);
}

/** Mean of a day outdoors, as where heating is usually off. [°C] */
export const MILD = 13;
const FEWEST = 5;
