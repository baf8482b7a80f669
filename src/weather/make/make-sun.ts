import { dayOfYear } from '../../physics/sun/day-of-year.ts';
import { extraterrestrialNormal } from '../../physics/sun/extraterrestrial.ts';
import { splitGlobalErbs } from '../../physics/sun/split-global-erbs.ts';
import type { Random } from '../../units/seeded-random.ts';
import { meanCosZenith } from '../complete/mean-cos-zenith.ts';
import {
  dailyCurve,
  HOURS_OF_YEAR,
  matchMonths,
  monthlyCurve,
  monthlyMeans,
} from './monthly-curve.ts';
import { persistentSeries } from './persistent-series.ts';
import type { WeatherRecipe } from './recipe.ts';

export interface MadeSun {
  /** [W/m2] */
  readonly directNormal: Float64Array;
  /** [W/m2] */
  readonly diffuseHorizontal: Float64Array;
  /** How clear each day is beside its season: normal, mean 0, deviation 1. [-] */
  readonly dailyClear: Float64Array;
}

/**
 * Sun of an invented year: drifting cloud leaves a share of a clear sky's global irradiance, so much
 * that months get the sums of the recipe; direct and diffuse by Erbs (1982).
 */
export function makeSun(recipe: WeatherRecipe, start: number, random: Random): MadeSun {
  const { cosines, days, clear, mostSun, targets } = skyOf(recipe, start);

  const dailyClear = persistentSeries(random, HOURS_OF_YEAR / 24, recipe.sun.persistence);
  const hourly = persistentSeries(random, HOURS_OF_YEAR, HOURLY_PERSISTENCE);
  const drift = dailyCurve(dailyClear).map((z, k) => DAILY_SHARE * z + HOURLY_SHARE * hourly[k]!);
  const global = matchMonths(
    new Array<number>(12).fill(0),
    targets,
    (values) => {
      const middle = monthlyCurve(values);
      return clear.map((most, k) => most * shareOfClear(middle[k]! + SPREAD * drift[k]!));
    },
    monthlyMeans,
    (value, target, got, month) => {
      const most = mostSun[month]!;
      if (target < NEARLY_ALL * most) return value + GAIN * Math.log(target / got);
      return value + logit(target / most) - logit(got / most);
    },
  );
  const directNormal = new Float64Array(HOURS_OF_YEAR);
  const diffuseHorizontal = new Float64Array(HOURS_OF_YEAR);
  for (let k = 0; k < HOURS_OF_YEAR; k++) {
    const parts = splitGlobalErbs(global[k]!, cosines[k]!, days[k]!);
    directNormal[k] = parts.directNormal;
    diffuseHorizontal[k] = parts.diffuseHorizontal;
  }
  return { directNormal, diffuseHorizontal, dailyClear };
}

/** Months of a recipe that ask more sun than nearly always clear sky has. [kWh/m2 a day] */
export function tooSunny(
  recipe: Pick<WeatherRecipe, 'latitude' | 'longitude' | 'sun'>,
  start: number,
): { readonly month: number; readonly most: number; readonly asked: number }[] {
  const { mostSun, targets } = skyOf(recipe, start);
  const daily = (watts: number): number => (watts * 24) / 1000;
  return targets.flatMap((target, month) => {
    const most = MOST_OF_CLEAR * mostSun[month]!;
    return target <= most ? [] : [{ month, most: daily(most), asked: daily(target) }];
  });
}

/** What the place gives of sun hour by hour, and what the recipe asks of it month by month. */
function skyOf(
  { latitude, longitude, sun }: Pick<WeatherRecipe, 'latitude' | 'longitude' | 'sun'>,
  start: number,
) {
  /** Mean cosine of the sun's zenith angle in each hour of the year. */
  const cosines = Float64Array.from({ length: HOURS_OF_YEAR }, (_, k) =>
    meanCosZenith(start + k * 3600, 3600, latitude, longitude),
  );
  /** Day of the year of each hour. */
  const days = Float64Array.from(cosines, (_, k) => Math.floor(dayOfYear(start + k * 3600)));
  /** Global irradiance under a clear sky in each hour. [W/m2] */
  const clear = cosines.map(clearGlobal);
  const beyond = cosines.map((cos, k) => cos * extraterrestrialNormal(days[k]!));
  return {
    ...{ cosines, days, clear },
    /** Means of the months under a clear sky. [W/m2] */
    mostSun: monthlyMeans(clear),
    targets: monthlyTargets(sun, monthlyMeans(beyond)),
  };
}

/** Mean global irradiance that each month is to have. [W/m2] */
function monthlyTargets(
  { global, clearness }: WeatherRecipe['sun'],
  beyond: readonly number[],
): number[] {
  if (global !== undefined) return global.map((kWh) => (kWh * 1000) / 24);
  return clearness!.map((share, month) => share * beyond[month]!);
}

/** Global irradiance under a clear sky [W/m2]; Haurwitz 1945, J. Meteorology 2, 154-166 (from memory). */
const clearGlobal = (cosZenith: number): number =>
  cosZenith > 0 ? 1098 * cosZenith * Math.exp(-0.057 / cosZenith) : 0;

/** The number of which a share is the logistic. */
const logit = (share: number): number => Math.log(share / (1 - share));

/** Share of a clear sky's sun that passes, from any number: logistic between the darkest and all. */
const shareOfClear = (x: number): number => DARKEST + (1 - DARKEST) / (1 + Math.exp(-x));

// Shape of the drift, by eye: spells of bright and dull days, broken within the day.
const HOURLY_PERSISTENCE = 0.85;
const DAILY_SHARE = 0.85;
const HOURLY_SHARE = 0.5;
const SPREAD = 2.2;
const DARKEST = 0.08;
/** Most of a clear month that a recipe may ask for; deserts have 0.93 to 0.95 in their sunniest (solar tables, from memory). [-] */
const MOST_OF_CLEAR = 0.97;
const GAIN = 2;
/** From this share of a clear month on, corrections go by what is left of its cloud, or they come too slowly. [-] */
const NEARLY_ALL = 0.9;
