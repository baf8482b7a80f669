import { clockSeconds } from '../units/clock-seconds.ts';
import { isoTime } from '../units/iso-time.ts';
import { type LocalClock, toLocal, toUtc, UTC_CLOCK } from '../units/local-clock.ts';
import { InputProblems, type Problem } from '../units/problem.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../units/time-units.ts';
import type { Weather } from './weather.ts';

/** A stretch of whole hours that a weather series covers. */
export interface Period {
  /** On the hour; in a series that closes on itself it may lie before the series' own start. [s UTC] */
  readonly start: number;
  readonly hours: number;
}

/** What of a series decides which periods it covers. */
export type Span = Pick<Weather, 'title' | 'start' | 'step' | 'count' | 'periodic'>;

/**
 * The period from the first to the last local day named, both included, inside a weather series.
 *
 * - Neither day named: all whole hours of the series; where it closes on itself, from a midnight of the
 *   wall clock near its beginning. One named: the series decides the other side.
 * - A last day before the first runs over new year.
 * - A series that closes on itself has every day of its year; any other must reach from the first to
 *   the last, of which it may lack some hours at its very ends.
 *
 * @param from  first day as "MM-DD", or null
 * @param to  last day as "MM-DD", or null
 * @param clock  the wall clock whose days are meant
 * @throws InputProblems where a day does not exist or the series does not reach
 */
export function periodOf(
  weather: Span,
  from: string | null,
  to: string | null,
  clock: LocalClock = UTC_CLOCK,
): Period {
  const begin = Math.ceil(weather.start / SECONDS_PER_HOUR) * SECONDS_PER_HOUR;
  const end =
    Math.floor((weather.start + weather.count * weather.step) / SECONDS_PER_HOUR) *
    SECONDS_PER_HOUR;
  const year = new Date(toLocal(clock, (begin + end) / 2) * 1000).getUTCFullYear();
  const problems: Problem[] = [];
  const complain = (path: readonly string[], expected: string, got: string) => {
    const place = { file: weather.title, line: 0, column: 0, where: path.join('.'), path };
    problems.push({ ...place, expected, got, hint: '' });
  };
  for (const [key, day] of [
    ['from', from],
    ['to', to],
  ] as const) {
    const known = day === null || YEARS_TRIED.some((n) => midnight(day, year + n, clock) !== null);
    if (!known) complain(['period', key], 'a day of the year as MM-DD', `"${day}"`);
  }
  if (problems.length > 0) throw new InputProblems(problems);
  const inside = weather.periodic ? inTurningYear : inOpenSeries;
  const found = inside(begin, end, year, from, to, clock);
  if (found === null) {
    const covered = `days inside the weather, ${isoTime(begin)} to ${isoTime(end)}`;
    complain(['period'], covered, `${from ?? 'its start'} to ${to ?? 'its end'}`);
    throw new InputProblems(problems);
  }
  return { start: found[0], hours: Math.round((found[1] - found[0]) / SECONDS_PER_HOUR) };
}

type Find = (
  begin: number,
  end: number,
  year: number,
  from: string | null,
  to: string | null,
  clock: LocalClock,
) => readonly [number, number] | null;

const inTurningYear: Find = (begin, end, year, from, to, clock) => {
  const firsts = from === null ? [midnightNear(begin, clock)] : midnights(from, year, clock);
  const start = firsts.find((s) => s >= begin - FARTHEST && s < end - FARTHEST);
  if (start === undefined) return null; // 29 February
  if (to === null) return [start, start + (end - begin)];
  const lasts = midnights(to, year, clock, 1);
  const stop = lasts.find((s) => s > start);
  if (stop === undefined) return null;
  if (stop < end + HALF_DAY) return [start, Math.min(start + (end - begin), stop)];
  // Days that run past the end of the series are those that ran into its beginning.
  const [before, until] = [firsts.findLast((s) => s < start), lasts.findLast((s) => s < stop)];
  return before === undefined || until === undefined ? null : [before, until];
};

const inOpenSeries: Find = (begin, end, year, from, to, clock) => {
  const firsts = from === null ? [begin] : midnights(from, year, clock);
  const first = firsts.find((s) => s > begin - SECONDS_PER_DAY && s < end);
  if (first === undefined) return null;
  const start = Math.max(begin, first);
  const lasts = to === null ? [end] : midnights(to, year, clock, 1);
  const stop = lasts.find((s) => s > start);
  return stop === undefined || stop - end >= SECONDS_PER_DAY ? null : [start, Math.min(end, stop)];
};

/**
 * Where a year turns is chance: it is begun with a month of the wall clock that no clock is too far from
 * UTC to mean, else with the nearest day. [s UTC]
 */
function midnightNear(utc: number, clock: LocalClock): number {
  const local = toLocal(clock, utc);
  const days = local / SECONDS_PER_DAY;
  const meant = [Math.floor(days), Math.ceil(days)].find(
    (day) =>
      Math.abs(day * SECONDS_PER_DAY - local) <= FARTHEST &&
      new Date(day * SECONDS_PER_DAY * 1000).getUTCDate() === 1,
  );
  return toUtc(clock, (meant ?? Math.round(days)) * SECONDS_PER_DAY);
}

/** Beginnings of a day of the year, or of one some days later, in the years about one, ascending. [s UTC] */
const midnights = (day: string, year: number, clock: LocalClock, daysLater = 0): number[] =>
  YEARS_TRIED.flatMap((n) => midnight(day, year + n, clock, daysLater) ?? []);

/** The instant at which a day of the year, or one some days later, begins on the wall clock; null for no day. */
function midnight(day: string, year: number, clock: LocalClock, daysLater = 0): number | null {
  const found = /^(\d\d)-(\d\d)$/.exec(day);
  if (found === null) return null;
  const local = clockSeconds(year, Number(found[1]), Number(found[2]), 0, 0);
  return local === null ? null : toUtc(clock, local + daysLater * SECONDS_PER_DAY);
}

const HALF_DAY = SECONDS_PER_DAY / 2;
/** No clock is farther ahead of UTC. [s] */
const FARTHEST = 14 * SECONDS_PER_HOUR;
const YEARS_TRIED = [-2, -1, 0, 1] as const;
