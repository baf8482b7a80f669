import { saturationPressureOverWater } from '../../physics/moist-air/saturation-pressure.ts';
import type { Random } from '../../units/seeded-random.ts';
import type { MadeTemperature } from './make-temperature.ts';
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
 * Dew point of an invented year: some kelvins below the temperature without its daily cycle, more on
 * clear days, so much that each month has its mean relative humidity; at most the temperature. [°C]
 */
export function makeDewPoint(
  recipe: WeatherRecipe,
  air: MadeTemperature,
  dailyClear: Float64Array,
  random: Random,
): Float64Array {
  const { temperature, withoutCycle } = air;
  const own = persistentSeries(random, HOURS_OF_YEAR / 24, PERSISTENCE);
  const dryness = dailyCurve(own.map((z, day) => Math.exp(OWN * z + CLEAR * dailyClear[day]!)));
  const most = temperature.map((t) => 100 / saturationPressureOverWater(t));
  const relative = (dew: Float64Array) =>
    monthlyMeans(dew.map((t, k) => saturationPressureOverWater(t) * most[k]!));
  return matchMonths(
    recipe.relativeHumidity.map((percent) => (100 - percent) / PER_KELVIN),
    recipe.relativeHumidity,
    (values) => {
      const below = monthlyCurve(values);
      return temperature.map((t, k) => Math.min(t, withoutCycle[k]! - below[k]! * dryness[k]!));
    },
    relative,
    (value, target, got) => value + (got - target) / PER_KELVIN,
  );
}

const PERSISTENCE = 0.6;
const OWN = 0.4;
const CLEAR = 0.25;
const PER_KELVIN = 6; // per cent of relative humidity that a kelvin of dew point makes, roughly
