import { vapourPressureFromHumidityRatio } from '../../physics/moist-air/humidity-ratio.ts';
import { relativeHumidity } from '../../physics/moist-air/relative-humidity.ts';
import { saturationPressureOverWater } from '../../physics/moist-air/saturation-pressure.ts';
import { vapourDensity } from '../../physics/moist-air/vapour-density.ts';
import { isoTime } from '../../units/iso-time.ts';
import { meanCosZenith } from '../complete/mean-cos-zenith.ts';
import type { Weather } from '../weather.ts';
import { dailyTemperatures } from './daily-temperatures.ts';
import { degreeDaysByMaxMin } from './degree-days-by-max-min.ts';
import { type DegreeDayKind, degreeDaysByMean } from './degree-days-by-mean.ts';
import { degreeDaysHourly } from './degree-days-hourly.ts';
import { describeInWords } from './describe-in-words.ts';
import { prevailingWind } from './prevailing-wind.ts';
import type {
  DegreeDayFigures,
  HumidityMeans,
  MonthFigures,
  WeatherDescription,
} from './weather-description.ts';

/** Figures and words about a series: means, extremes, degree-days, months. */
export function describeWeather(weather: Weather): WeatherDescription {
  const { start, step, count, temperature, periodic } = weather;
  const hour = step / 3600;
  const derived = derive(weather);
  const all = Array.from({ length: count }, (_, k) => k);
  const coldest = all.reduce((a, b) => (temperature[b]! < temperature[a]! ? b : a), 0);
  const hottest = all.reduce((a, b) => (temperature[b]! > temperature[a]! ? b : a), 0);
  const { directNormal } = weather;
  const global = sum(all, derived.global);
  const direct = sum(all, derived.global) - sum(all, weather.diffuseHorizontal);
  const figures = {
    title: weather.title,
    latitude: weather.latitude,
    longitude: weather.longitude,
    elevation_m: weather.elevation,
    from: isoTime(start),
    to: isoTime(start + count * step),
    hours: count * hour,
    step_minutes: step / 60,
    typical: periodic,
    temperature: {
      mean_c: mean(all, temperature),
      lowest_c: temperature[coldest]!,
      lowest_at: isoTime(start + coldest * step),
      highest_c: temperature[hottest]!,
      highest_at: isoTime(start + hottest * step),
      hours_below_0_c: all.filter((k) => temperature[k]! < 0).length * hour,
    },
    humidity: humidityMeans(all, derived),
    wind: {
      mean_m_per_s: mean(all, weather.windSpeed),
      highest_m_per_s: weather.windSpeed.reduce((a, b) => Math.max(a, b)),
      prevailing: prevailingWind(weather),
    },
    sun: {
      origin: weather.sun,
      global_kwh_per_m2: (global * hour) / 1000,
      direct_share: directNormal.some((value) => value > 0) ? direct / global : 0,
    },
    degree_days: BASES.map((base) => degreeDayFigures(weather, base)),
    months: monthsOf(weather, derived),
    notes: weather.notes,
  };
  return { ...figures, words: describeInWords(figures) };
}

interface Derived {
  readonly relative: Float64Array;
  readonly vapourPressure: Float64Array;
  readonly vapourDensity: Float64Array;
  readonly global: Float64Array;
}

function derive(weather: Weather): Derived {
  const { temperature, pressure, start, step, latitude, longitude } = weather;
  const vapourPressure = weather.humidityRatio.map((w, k) =>
    vapourPressureFromHumidityRatio(w, pressure[k]!),
  );
  return {
    relative: vapourPressure.map((pv, k) =>
      relativeHumidity(pv, temperature[k]!, saturationPressureOverWater),
    ),
    vapourPressure,
    vapourDensity: vapourPressure.map((pv, k) => vapourDensity(pv, temperature[k]!)),
    global: weather.directNormal.map((direct, k) => {
      const cosine = direct > 0 ? meanCosZenith(start + k * step, step, latitude, longitude) : 0;
      return weather.diffuseHorizontal[k]! + direct * cosine;
    }),
  };
}

function humidityMeans(steps: readonly number[], derived: Derived): HumidityMeans {
  return {
    mean_relative_humidity_pct: mean(steps, derived.relative),
    mean_vapour_pressure_pa: mean(steps, derived.vapourPressure),
    mean_vapour_density_g_per_m3: mean(steps, derived.vapourDensity),
  };
}

function degreeDayFigures(weather: Weather, base: number): DegreeDayFigures {
  const days = dailyTemperatures(weather);
  const ways = (kind: DegreeDayKind) => ({
    by_daily_mean: degreeDaysByMean(days, base, kind),
    by_max_min: degreeDaysByMaxMin(days, base, kind),
    by_hour: degreeDaysHourly(weather, base, kind),
  });
  return { base_c: base, heating: ways('heating'), cooling: ways('cooling') };
}

/** Months of the place's clock by whole hours of longitude; of a typical year from January on, wherever it begins. */
function monthsOf(weather: Weather, derived: Derived): MonthFigures[] {
  const { start, step, count, periodic, temperature } = weather;
  const offset = Math.round(weather.longitude / 15) * 3600;
  const nameOf = (utc: number) => isoTime(utc + offset).slice(periodic ? 5 : 0, 7);
  const months = new Map<string, number[]>();
  for (let k = 0; k < count; k++) {
    const name = nameOf(start + k * step);
    const steps = months.get(name);
    if (steps === undefined) months.set(name, [k]);
    else steps.push(k);
  }
  const days = dailyTemperatures(weather);
  const names = Array.from(days.start, nameOf);
  const inOrder = periodic ? [...months].sort(([a], [b]) => a.localeCompare(b)) : [...months];
  return inOrder.map(([month, steps]) => ({
    month,
    hours: (steps.length * step) / 3600,
    mean_c: mean(steps, temperature),
    lowest_c: Math.min(...steps.map((k) => temperature[k]!)),
    highest_c: Math.max(...steps.map((k) => temperature[k]!)),
    ...humidityMeans(steps, derived),
    global_kwh_per_m2_day: (mean(steps, derived.global) * 24) / 1000,
    mean_wind_m_per_s: mean(steps, weather.windSpeed),
    heating_degree_days: degreeDaysByMean(
      { mean: days.mean.filter((_, day) => names[day] === month) },
      BASES[0]!,
    ),
  }));
}

function sum(steps: readonly number[], values: Float64Array): number {
  return steps.reduce((total, k) => total + values[k]!, 0);
}

function mean(steps: readonly number[], values: Float64Array): number {
  return sum(steps, values) / steps.length;
}

/** British and North American (65 °F) customary bases. [°C] */
const BASES: readonly number[] = [15.5, 18.33];
