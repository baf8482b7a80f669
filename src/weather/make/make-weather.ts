import { humidityRatioFromVapourPressure } from '../../physics/moist-air/humidity-ratio.ts';
import { saturationPressureOverWater } from '../../physics/moist-air/saturation-pressure.ts';
import { standardPressure } from '../../physics/moist-air/standard-pressure.ts';
import { type Random, seededRandom } from '../../units/seeded-random.ts';
import { TYPICAL_YEAR } from '../typical-year.ts';
import type { Weather } from '../weather.ts';
import { checkRecipe } from './check-recipe.ts';
import { makeDewPoint } from './make-dew-point.ts';
import { makeSun } from './make-sun.ts';
import { makeTemperature } from './make-temperature.ts';
import { makeWind } from './make-wind.ts';
import { dailyCurve, HOURS_OF_YEAR } from './monthly-curve.ts';
import { persistentSeries } from './persistent-series.ts';
import type { WeatherRecipe } from './recipe.ts';

/**
 * An invented year of hourly weather that has the climate of a recipe: its monthly means, its daily
 * range, spells of several days, and air, cloud and humidity that go together.
 *
 * - Cloud drifts from day to day and hour to hour; sun is what it leaves of a clear sky.
 * - Temperature is season, spells and the daily cycle; clear days swing more, and are warmer in summer
 *   and colder in winter.
 * - Dew point follows the spells but not the daily cycle, so that relative humidity falls on warm
 *   afternoons, and never exceeds the temperature.
 * - Wind is a vector about the prevailing one.
 *
 * Not for judging a real place: extremes, long droughts and storms are those of the formula.
 *
 * @param seed  which of the endless years of this climate
 * @throws InputProblems where the recipe is wrong or asks more sun than a clear sky has
 */
export function makeWeather(recipe: WeatherRecipe, seed = 1): Weather {
  checkRecipe(recipe);
  const start = Date.UTC(TYPICAL_YEAR, 0) / 1000;
  const random = seededRandom(seed);
  const sun = makeSun(recipe, start, random);
  const air = makeTemperature(recipe, start, sun.dailyClear, random);
  const dew = makeDewPoint(recipe, air, sun.dailyClear, random);
  const wind = makeWind(recipe, start, random);
  const pressure = makePressure(recipe, random);
  const { title, latitude, longitude, elevation, usual = [] } = recipe;
  return {
    ...{ title, latitude, longitude, elevation, start, step: 3600, count: HOURS_OF_YEAR },
    periodic: true,
    temperature: air.temperature,
    humidityRatio: dew.map((t, k) =>
      humidityRatioFromVapourPressure(saturationPressureOverWater(t), pressure[k]!),
    ),
    pressure,
    windSpeed: wind.speed,
    windDirection: wind.direction,
    directNormal: sun.directNormal,
    diffuseHorizontal: sun.diffuseHorizontal,
    sun: 'invented',
    species: {},
    notes: [
      { id: 'invented', text: `an invented year, made from monthly normals, seed ${seed}` },
      ...(usual.length === 0
        ? []
        : [
            {
              id: 'invented' as const,
              text: `as usual, because the recipe does not say: ${usual.join(', ')}`,
            },
          ]),
    ],
  };
}

/** Highs and lows of a few days about the standard pressure of the elevation. [Pa] */
function makePressure(recipe: WeatherRecipe, random: Random): Float64Array {
  const middle = standardPressure(recipe.elevation);
  const spells = dailyCurve(persistentSeries(random, HOURS_OF_YEAR / 24, PRESSURE_PERSISTENCE));
  return spells.map((z) => middle + PRESSURE_SPREAD * z);
}

const PRESSURE_PERSISTENCE = 0.8;
const PRESSURE_SPREAD = 1000; // Pa, common practice for mid-latitudes
