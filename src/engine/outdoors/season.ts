import { dayOfYear } from '../../physics/sun/day-of-year.ts';
import { cosineOf, sineOf } from '../../units/portable-math.ts';
import type { Weather } from '../../weather/weather.ts';

/** Annual cycle of the outdoor temperature: mean, amplitude and coldest day of its first harmonic. */
export interface Season {
  /** [°C] */
  readonly mean: number;
  /** [K] */
  readonly amplitude: number;
  /** Day of the year, 1 to 366. */
  readonly coldest: number;
}

/**
 * Fit the annual cycle to the outdoor temperature, once for all runs under one weather. A file that
 * covers less than nine tenths of a year has none: its mean stands for the year and the amplitude is 0.
 */
export function seasonOf(weather: Weather): Season {
  const season = SEASONS.get(weather) ?? fitted(weather);
  SEASONS.set(weather, season);
  return season;
}

function fitted(weather: Weather): Season {
  const { count, step, start, temperature } = weather;
  let sum = 0;
  let cosine = 0;
  let sine = 0;
  const first = dayOfYear(start);
  for (let k = 0; k < count; k++) {
    const angle = (2 * Math.PI * (first + (k * step) / DAY)) / YEAR;
    const t = temperature[k]!;
    sum += t;
    cosine += t * cosineOf(angle);
    sine += t * sineOf(angle);
  }
  const mean = sum / count;
  if (count * step < MOST_OF_A_YEAR * YEAR * DAY) return { mean, amplitude: 0, coldest: 1 };
  const a = (2 * cosine) / count;
  const b = (2 * sine) / count;
  const warmest = (Math.atan2(b, a) / (2 * Math.PI)) * YEAR;
  return {
    mean,
    amplitude: Math.hypot(a, b),
    coldest: (((warmest + YEAR / 2) % YEAR) + YEAR) % YEAR,
  };
}

const SEASONS = new WeakMap<Weather, Season>();
const DAY = 86_400;
const YEAR = 365.25;
const MOST_OF_A_YEAR = 0.9;
