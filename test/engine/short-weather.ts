import type { Weather } from '../../src/weather/weather.ts';
import { madeWeather, NEW_YEAR } from './homes.ts';

/** What the weather does, by seconds since it began. */
interface Course {
  readonly temperature?: (t: number) => number;
  readonly humidityRatio?: (t: number) => number;
  readonly wind?: (t: number) => number;
  readonly direct?: (t: number) => number;
  readonly diffuse?: (t: number) => number;
  /** Outdoor level by species, by the middle of an interval. */
  readonly species?: Readonly<Record<string, (t: number) => number>>;
}

/** One day that comes again and again, given every few seconds so that interpolating it does not matter. */
export function steadyDay(course: Course, step = 20): Weather {
  return steady(course, 86_400, step);
}

/** Short weather with another period. */
export function steady(course: Course, period: number, step: number): Weather {
  return fine(course, step, period, true, NEW_YEAR);
}

/** Weather that happens once, hourly unless told, around New Year: begins `before` days earlier. */
export function lastDays(course: Course, days: number, step = 3600, before = 0): Weather {
  return fine(course, step, days * 86_400, false, NEW_YEAR - before * 86_400);
}

function fine(c: Course, step: number, length: number, periodic: boolean, start: number): Weather {
  const count = Math.round(length / step);
  const by = (f: ((t: number) => number) | undefined, fallback: number) =>
    f === undefined ? () => fallback : (k: number) => f(k * step);
  const weather = madeWeather(
    {
      temperature: by(c.temperature, 5),
      humidityRatio: by(c.humidityRatio, 0.004),
      wind: by(c.wind, 3),
      ...(c.direct === undefined ? {} : { direct: by(c.direct, 0) }),
      ...(c.diffuse === undefined ? {} : { diffuse: by(c.diffuse, 0) }),
    },
    { hours: count, start, periodic },
  );
  const species = Object.fromEntries(
    Object.entries(c.species ?? {}).map(([name, level]) => [
      name,
      Float64Array.from({ length: count }, (_, k) => level((k + 0.5) * step)),
    ]),
  );
  return { ...weather, step, species };
}
