import type { Log } from '../../log/log.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { Weather } from '../../weather/weather.ts';
import { GASES } from './gases.ts';
import type { Division, Span } from './span.ts';

/**
 * Hours that the log and the weather have in common; 0 where they do not overlap. What is read of rooms
 * bounds it, to the day: a meter that was read for years tells nothing of rooms in which nobody measured.
 */
export function commonSpan(all: Log, weather: Weather): Span {
  const ofRooms = all.series.filter(
    ({ quantity, room }) => room !== null && OF_AIR.includes(quantity),
  );
  const log =
    ofRooms.length === 0
      ? all
      : {
          start: Math.max(all.start, Math.min(...ofRooms.map(({ times }) => times[0]!)) - ABOUT),
          end: Math.min(all.end, Math.max(...ofRooms.map(({ times }) => times.at(-1)!)) + ABOUT),
        };
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

/** What runs are compared with, room by room. */
const OF_AIR: readonly string[] = ['temperature', 'relative humidity', ...GASES];
/** Of a longer log the latest days are used: homes and habits change. */
const MOST_DAYS = 182;
/** How far meters may reach beyond. [s] */
const ABOUT = SECONDS_PER_DAY;
