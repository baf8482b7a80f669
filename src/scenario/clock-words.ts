import { MINUTES_PER_DAY } from '../units/time-units.ts';
import { ALL_YEAR } from './month-words.ts';

/** Minutes after local midnight of "06:30" or "6:30"; NaN for anything else. "24:00" is the day's end. */
export function minutesOf(text: string): number {
  const match = /^(\d{1,2}):([0-5]\d)$/.exec(text.trim());
  if (match === null) return Number.NaN;
  const minutes = Number(match[1]) * 60 + Number(match[2]);
  return minutes <= MINUTES_PER_DAY ? minutes : Number.NaN;
}

/** Bits of the days named by "weekdays", "Tue" or a list; Monday is bit 0. NaN for an unknown name. */
export function daysOf(written: string | readonly string[]): number {
  const names = typeof written === 'string' ? [written] : written;
  let bits = 0;
  for (const name of names) {
    const plain = name.trim().toLowerCase();
    const group = Object.hasOwn(GROUPS, plain) ? GROUPS[plain] : undefined;
    const day = DAYS.findIndex((full) => plain.length >= 3 && full.startsWith(plain));
    if (group === undefined && day < 0) return Number.NaN;
    bits |= group ?? 1 << day;
  }
  return bits;
}

/** Number of the first day that a list names twice, null for none. */
export function dayTwice(written: string | readonly string[]): number | null {
  let known = 0;
  for (const name of [written].flat()) {
    const bits = daysOf(name as string);
    const again = known & bits;
    if (again !== 0) return 31 - Math.clz32(again & -again);
    known |= bits;
  }
  return null;
}

/**
 * A spell as `control/household.ts` wants it: the end counts from the midnight before the start; on
 * every day and in all months where nobody says otherwise.
 */
export function spellOf(days: number | undefined, from: number, to: number, months = ALL_YEAR) {
  const seldom = months === ALL_YEAR ? {} : { months };
  return { days: days ?? EVERY_DAY, ...seldom, from, to: to > from ? to : to + MINUTES_PER_DAY };
}

/** Whether a spell leaves out no minute of the year. */
export const isAlways = ({ days, months, from, to }: ReturnType<typeof spellOf>): boolean =>
  days === EVERY_DAY && (months ?? ALL_YEAR) === ALL_YEAR && to - from === MINUTES_PER_DAY;

/** A minute of the week, counted from Monday midnight, in words: "monday at 06:30". */
export function momentOfWeek(minute: number): string {
  const day = DAYS[Math.floor(minute / MINUTES_PER_DAY)] ?? '';
  return `${day} at ${timeOf(minute % MINUTES_PER_DAY)}`;
}

/** A minute of the day as "06:30". */
export const timeOf = (minute: number): string => {
  const two = (count: number) => String(count).padStart(2, '0');
  return `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
};

export const EVERY_DAY = 0b1111111;
export const DAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
export const GROUPS: Readonly<Record<string, number>> = {
  'every day': EVERY_DAY,
  weekdays: 0b0011111,
  weekends: 0b1100000,
};
