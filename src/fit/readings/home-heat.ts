import type { Home } from '../../home/home.ts';
import { type Log, type LoggedSeries, seriesOf } from '../../log/log.ts';
import { longestGap } from '../../log/longest-gap.ts';
import { meansOverSteps } from '../../log/onto-steps.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { Weather } from '../../weather/weather.ts';
import { meanOf } from '../statistics/misfit.ts';
import { meansOver, type Stretches } from './means-over.ts';
import { meterStretches } from './meter-stretches.ts';
import { type Beside, meteredHeat } from './metered-heat.ts';
import type { DividedSpan } from './span.ts';

/** Heat that all rooms of a home got, as a meter tells it. */
export interface HomeHeat {
  /** The meter's own series. */
  readonly meter: LoggedSeries;
  /** By the hour, each with the mean of its stretch where there are any; NaN where it is not known. [W] */
  readonly observed: Float64Array;
  /** Hours of which only means are known; null where each can be compared. */
  readonly stretches: Stretches | null;
  /** Mean of all that is known. [W] */
  readonly mean: number;
  /** How it was made from a meter that counts other things too; null where it was not. */
  readonly words: string | null;
}

/**
 * Heat of the whole home by a meter of it, or by what the heating draws or burns; null for none. Of a
 * meter that counts hot water too only days are known: showers and meals have their hours; of one that is
 * read seldom, what is between its readings.
 */
export function homeHeat(
  log: Log,
  home: Home,
  division: DividedSpan,
  weather: Weather,
  beside: Beside,
): HomeHeat | null {
  const metered = meteredHeat(log, home, weather, beside);
  const meter = metered?.meter ?? seriesOf(log, 'heating power', null);
  if (meter === undefined) return null;
  const series = metered?.series ?? meter;
  const { start, hours, withheld } = division;
  const gap = series.reading === 'mean' ? LONGEST_INTERVAL : longestGap(series);
  const hourly = meansOverSteps(series, { start, step: SECONDS_PER_HOUR, count: hours }, gap);
  const mean = meanOf(hourly);
  const words = metered?.words ?? null;
  let stretches: Stretches | null = null;
  if (words !== null || isReadSeldom(series)) {
    const of = meterStretches(series, division, withheld, hourly);
    stretches = { of, known: hourly };
  }
  if (hourly.subarray(0, withheld).every((x) => Number.isNaN(x))) return null;
  const observed = stretches === null ? hourly : meansOver(hourly, stretches);
  return { meter, observed, stretches, mean, words };
}

/** Whether most means of a meter are over more than an hour. */
const isReadSeldom = ({ times, reading }: LoggedSeries): boolean =>
  reading === 'mean' && times.at(-1)! - times[0]! > 1.5 * SECONDS_PER_HOUR * (times.length - 1);

/** A meter that is read once a month tells what was used meanwhile. [s] */
const LONGEST_INTERVAL = 35 * SECONDS_PER_DAY;
