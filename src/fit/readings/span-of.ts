import type { Log } from '../../log/log.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { Weather } from '../../weather/weather.ts';
import type { Span } from './readings.ts';

/** How a log is divided, in hours from its start. */
export interface Division extends Span {
  /** Rooms are held at the log until here, and then let go. */
  readonly release: number;
  /** Hours before it are fitted, the others withheld. */
  readonly withheld: number;
}

/** Hours that the log and the weather have in common; 0 where they do not overlap. */
export function commonSpan(log: Log, weather: Weather): Span {
  const weatherEnd = weather.start + weather.count * weather.step;
  const end = Math.floor(Math.min(log.end, weatherEnd) / SECONDS_PER_HOUR) * SECONDS_PER_HOUR;
  const first = Math.ceil(Math.max(log.start, weather.start) / SECONDS_PER_HOUR) * SECONDS_PER_HOUR;
  const start = Math.max(first, end - MOST_DAYS * SECONDS_PER_DAY);
  return { start, hours: Math.max(0, Math.round((end - start) / SECONDS_PER_HOUR)) };
}

/** The last fortnight, or a fifth of a shorter log, is withheld; rooms are held through the first days. */
export function divide({ start, hours }: Span): Division {
  const withheld = Math.min(14 * 24, Math.floor(hours / 5));
  const release = hours >= 42 * 24 ? 5 * 24 : hours >= 21 * 24 ? 3 * 24 : 24;
  return { start, hours, release, withheld: hours - withheld };
}

/** Of a longer log the latest days are used: homes and habits change. */
const MOST_DAYS = 182;
