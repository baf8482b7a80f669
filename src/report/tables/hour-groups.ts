import { type LocalClock, localDay, toLocal, weekday } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/time-units.ts';

/** Hours in a row. */
export interface Stretch {
  /** Instant at which the first hour begins. [s UTC] */
  readonly start: number;
  readonly clock: LocalClock;
  readonly count: number;
}

/** Hours that one line of a picture is about, by their numbers. */
export interface HourGroup {
  readonly label: string;
  readonly hours: readonly number[];
}

export type LineLength = '3 hours' | 'day' | 'week';

/** How much one line holds, so that the picture stays a screen or two. */
export function lineLength(stretch: Stretch): LineLength {
  const { first, last } = daysOf(stretch);
  const count = last - first + 1;
  return count <= MOST_DAYS_BY_HOURS ? '3 hours' : count <= MOST_DAYS_BY_DAY ? 'day' : 'week';
}

/** Hours by every 3 hours, day or seven days by the wall clock, and a last group of all of them. */
export function hourGroups(stretch: Stretch): HourGroup[] {
  const { first, last } = daysOf(stretch);
  const length = lineLength(stretch);
  const groups = new Map<number, number[]>();
  const all = Array.from({ length: stretch.count }, (_, h) => h);
  for (const h of all) {
    const local = localAt(stretch, h);
    const key =
      length === '3 hours'
        ? Math.floor(local / THREE_HOURS)
        : length === 'day'
          ? localDay(local)
          : Math.floor((localDay(local) - first) / 7);
    const known = groups.get(key);
    if (known === undefined) groups.set(key, [h]);
    else known.push(h);
  }
  const lines = [...groups].sort(([a], [b]) => a - b);
  return [
    ...lines.map(([key, hours]) => ({ label: labelOf(length, key, first, last), hours })),
    { label: 'all', hours: all },
  ];
}

/** First and last local day. */
export function daysOf(stretch: Stretch): { readonly first: number; readonly last: number } {
  return {
    first: localDay(localAt(stretch, 0)),
    last: localDay(localAt(stretch, stretch.count - 1)),
  };
}

function labelOf(length: LineLength, key: number, first: number, last: number): string {
  if (length === 'week') {
    const from = first + 7 * key;
    return `${monthDay(from)} to ${monthDay(Math.min(from + 6, last))}`;
  }
  if (length === 'day') return `${WEEKDAYS[weekday(key)]} ${monthDay(key)}`;
  const day = localDay(key * THREE_HOURS);
  const hour = (key * THREE_HOURS - day * SECONDS_PER_DAY) / SECONDS_PER_HOUR;
  return `${WEEKDAYS[weekday(day)]} ${monthDay(day)} ${String(hour).padStart(2, '0')}:00`;
}

/** "01-09" of a local day. */
const monthDay = (day: number): string =>
  new Date(day * SECONDS_PER_DAY * 1000).toISOString().slice(5, 10);

/** What the wall clock shows when an hour begins. [s local] */
export const localAt = ({ clock, start }: Pick<Stretch, 'clock' | 'start'>, hour: number): number =>
  toLocal(clock, start + hour * SECONDS_PER_HOUR);

const THREE_HOURS = 3 * SECONDS_PER_HOUR;
const MOST_DAYS_BY_HOURS = 7;
const MOST_DAYS_BY_DAY = 40;
const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
