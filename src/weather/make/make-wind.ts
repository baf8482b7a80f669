import { DEGREE, turn } from '../../physics/sun/angles.ts';
import { solarHourAngle } from '../../physics/sun/sun-position.ts';
import { cosineOf } from '../../units/portable-math.ts';
import type { Random } from '../../units/seeded-random.ts';
import {
  dailyCurve,
  HOURS_OF_YEAR,
  matchMonths,
  monthlyCurve,
  monthlyMeans,
} from './monthly-curve.ts';
import { persistentSeries } from './persistent-series.ts';
import type { WeatherRecipe } from './recipe.ts';

/**
 * Wind of an invented year: a vector that wanders about the prevailing wind, days and hours apart,
 * somewhat stronger by day; scaled so that each month has its mean speed.
 */
export function makeWind(
  recipe: WeatherRecipe,
  start: number,
  random: Random,
): { readonly speed: Float64Array; readonly direction: Float64Array } {
  const { mean, persistence, prevailing } = recipe.wind;
  const along = wandering(random, persistence);
  const across = wandering(random, persistence);
  const strength = along.map((z, k) => {
    const day =
      1 + BY_DAY * cosineOf((solarHourAngle(start + k * 3600, recipe.longitude) - LATER) * DEGREE);
    return day * Math.hypot(PREVAILS + z, across[k]!);
  });
  const speed = matchMonths(
    mean,
    mean,
    (values) => {
      const scale = monthlyCurve(values);
      return strength.map((value, k) => value * scale[k]!);
    },
    monthlyMeans,
    (value, target, got) => (got > 0 ? (value * target) / got : value),
  );
  const direction = along.map((z, k) =>
    turn(prevailing + Math.atan2(across[k]!, PREVAILS + z) / DEGREE),
  );
  return { speed, direction };
}

/** One component: mostly from day to day, partly from hour to hour; deviation about 1. */
function wandering(random: Random, persistence: number): Float64Array {
  const daily = dailyCurve(persistentSeries(random, HOURS_OF_YEAR / 24, persistence));
  const hourly = persistentSeries(random, HOURS_OF_YEAR, HOURLY_PERSISTENCE);
  return daily.map((z, k) => DAILY_SHARE * z + HOURLY_SHARE * hourly[k]!);
}

const PREVAILS = 0.8; // mean of the component along, in its own deviations
const BY_DAY = 0.15;
const LATER = 30; // strongest two hours after noon [deg]
const HOURLY_PERSISTENCE = 0.9;
const DAILY_SHARE = 0.85;
const HOURLY_SHARE = 0.5;
