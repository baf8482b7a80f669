import { dayOfYear } from '../../physics/sun/day-of-year.ts';
import { cosineOf, sineOf } from '../../units/portable-math.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
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

/** Least squares of mean, cosine and sine, which are orthogonal over whole years only. */
function fitted(weather: Weather): Season {
  const { count, step, start, temperature } = weather;
  const first = dayOfYear(start);
  let sum = 0;
  let [c, s, cc, cs, ss, tc, ts] = [0, 0, 0, 0, 0, 0, 0];
  for (let k = 0; k < count; k++) {
    const angle = (2 * Math.PI * (first + (k * step) / SECONDS_PER_DAY)) / YEAR;
    const cosine = cosineOf(angle);
    const sine = sineOf(angle);
    const t = temperature[k]!;
    sum += t;
    c += cosine;
    s += sine;
    cc += cosine * cosine;
    cs += cosine * sine;
    ss += sine * sine;
    tc += t * cosine;
    ts += t * sine;
  }
  if (count * step < MOST_OF_A_YEAR * YEAR * SECONDS_PER_DAY) {
    return { mean: sum / count, amplitude: 0, coldest: 1 };
  }
  // Of deviations from the means, so that two unknowns are left.
  cc -= (c * c) / count;
  cs -= (c * s) / count;
  ss -= (s * s) / count;
  tc -= (sum * c) / count;
  ts -= (sum * s) / count;
  const determinant = cc * ss - cs * cs;
  const a = (tc * ss - ts * cs) / determinant;
  const b = (ts * cc - tc * cs) / determinant;
  const warmest = (Math.atan2(b, a) / (2 * Math.PI)) * YEAR;
  return {
    mean: (sum - a * c - b * s) / count,
    amplitude: Math.hypot(a, b),
    coldest: (((warmest + YEAR / 2) % YEAR) + YEAR) % YEAR,
  };
}

const SEASONS = new WeakMap<Weather, Season>();
const YEAR = 365.25;
const MOST_OF_A_YEAR = 0.9;
