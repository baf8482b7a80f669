import { solarDeclination } from '../../physics/sun/solar-coordinates.ts';
import { solarHourAngle, sunsetHourAngle } from '../../physics/sun/sun-position.ts';
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

export interface MadeTemperature {
  /** [°C] */
  readonly temperature: Float64Array;
  /** Temperature without its daily cycle: season and spells of days. [°C] */
  readonly withoutCycle: Float64Array;
}

/** Temperature of an invented year: season, spells of days, and a daily cycle that clear days widen. */
export function makeTemperature(
  recipe: WeatherRecipe,
  start: number,
  dailyClear: Float64Array,
  random: Random,
): MadeTemperature {
  const { mean, persistence, dailyRange, dayToDay } = recipe.temperature;
  const own = persistentSeries(random, HOURS_OF_YEAR / 24, persistence);
  const warmWhenClear = recipe.latitude >= 0 ? CLEAR_WARMS : -CLEAR_WARMS;
  const departures = dailyCurve(
    own.map((z, day) => {
      const part = -warmWhenClear * cosineOf((2 * Math.PI * (day - COLDEST_DAY)) / 365);
      return Math.sqrt(1 - part * part) * z + part * dailyClear[day]!;
    }),
  );
  const widths = monthlyCurve(dayToDay);
  const spells = departures.map((z, k) => z * widths[k]!);
  const flutter = persistentSeries(random, HOURS_OF_YEAR, FLUTTER_PERSISTENCE);
  const opening = dailyCurve(dailyClear.map((z) => 1 + CLEAR_WIDENS * Math.tanh(z)));
  const cycle = dailyCycle(recipe, start).map((swing, k) => (swing * opening[k]!) / 2);
  const season = monthlyCurve(mean);
  const steady = season.map((value, k) => value + spells[k]! + FLUTTER * flutter[k]!);

  // First the width of the cycle, then what the means still lack.
  const swinging = matchMonths(
    dailyRange,
    dailyRange,
    (values) => {
      const width = monthlyCurve(values);
      return steady.map((value, k) => value + cycle[k]! * width[k]!);
    },
    (series) => monthlyMeans(dailyRanges(series)),
    (value, target, got) => Math.max(0, value + target - got),
  );
  const temperature = matchMonths(
    new Array<number>(12).fill(0),
    mean,
    (values) => {
      const lacking = monthlyCurve(values);
      return swinging.map((value, k) => value + lacking[k]!);
    },
    monthlyMeans,
    (value, target, got) => value + target - got,
  );
  const withoutCycle = temperature.map(
    (value, k) => value - swinging[k]! + season[k]! + spells[k]!,
  );
  return { temperature, withoutCycle };
}

/** Highest less lowest of the UTC day, at every hour of it. [K] */
function dailyRanges(hourly: Float64Array): Float64Array {
  const ranges = new Float64Array(hourly.length);
  for (let k = 0; k < hourly.length; k += 24) {
    const day = hourly.subarray(k, k + 24);
    ranges.fill(Math.max(...day) - Math.min(...day), k, k + 24);
  }
  return ranges;
}

/** -1 at sunrise, 1 in mid-afternoon, half waves of a cosine between. */
function dailyCycle({ latitude, longitude }: WeatherRecipe, start: number): Float64Array {
  return Float64Array.from({ length: HOURS_OF_YEAR }, (_, k) => {
    const now = start + k * 3600;
    const rise = -sunsetHourAngle(latitude, solarDeclination(now));
    const angle = solarHourAngle(now, longitude);
    const sinceRise = (angle - rise + 720) % 360;
    const climb = WARMEST - rise;
    if (sinceRise < climb) return -cosineOf((Math.PI * sinceRise) / climb);
    return cosineOf((Math.PI * (sinceRise - climb)) / (360 - climb));
  });
}

const WARMEST = 37.5; // hour angle of 14:30 solar time [deg]
const CLEAR_WARMS = 0.4; // correlation of clear and warm days at midsummer, of clear and cold at midwinter
const CLEAR_WIDENS = 0.45; // share by which the clearest days widen the daily cycle
const COLDEST_DAY = 15;
const FLUTTER = 0.3; // K
const FLUTTER_PERSISTENCE = 0.8;
