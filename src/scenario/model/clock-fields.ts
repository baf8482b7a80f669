import * as z from 'zod';
import { nearestName } from '../../units/nearest-name.ts';
import { choice, either, list, section } from './fields.ts';
import { ALL_YEAR, months } from './month-fields.ts';

/** Minutes after local midnight of "06:30" or "6:30"; NaN for anything else. "24:00" is the day's end. */
export function minutesOf(text: string): number {
  const match = /^(\d{1,2}):([0-5]\d)$/.exec(text.trim());
  if (match === null) return Number.NaN;
  const minutes = Number(match[1]) * 60 + Number(match[2]);
  return minutes <= DAY ? minutes : Number.NaN;
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
function dayTwice(written: string | readonly string[]): number | null {
  let known = 0;
  for (const name of [written].flat()) {
    const bits = daysOf(name as string);
    const again = known & bits;
    if (again !== 0) return 31 - Math.clz32(again & -again);
    known |= bits;
  }
  return null;
}

export const clock = (says: string) =>
  z
    .string({ error: () => CLOCK_WORDS })
    .transform((written, context) => {
      const minutes = minutesOf(written);
      if (Number.isNaN(minutes)) context.addIssue({ code: 'custom', message: CLOCK_WORDS });
      return minutes;
    })
    .describe(`${says} [local time, "HH:MM"]`);

const CLOCKS = 'a local time such as "07:00", or a list of them';

/** One time of day or several, each once. */
export const times = (says: string) =>
  either(
    [
      clock('One time'),
      list(clock('One time'), CLOCKS, 'Several times').refine(
        (all) => new Set(all).size === all.length,
        { error: 'every time once' },
      ),
    ],
    CLOCKS,
    says,
  ).transform((given) => [given].flat());

export const days = () =>
  z
    .union([z.string(), z.array(z.string())], { error: () => DAYS_WORDS })
    .transform((written, context) => {
      const bits = daysOf(written);
      const twice = dayTwice(written);
      if (twice !== null) {
        const got = `${DAYS[twice]} twice`;
        context.addIssue({ code: 'custom', message: 'every day once', params: { got } });
      } else if (Number.isNaN(bits) || bits === 0) {
        const unknown = [written].flat().find((name) => Number.isNaN(daysOf(name))) ?? '';
        const near = nearestName(unknown, [...DAYS, ...Object.keys(GROUPS)]);
        const hint = near === null ? '' : `did you mean "${near}"?`;
        const got = unknown === '' ? 'no day at all' : JSON.stringify(unknown);
        context.addIssue({ code: 'custom', message: DAYS_WORDS, params: { got, hint } });
      }
      return bits;
    })
    .describe('On which days it starts: every day (default), weekdays, weekends, or day names');

/** "22:30-06:00": every day, past midnight where the end is not after the start. */
const span = z
  .string({ error: () => SPAN_WORDS })
  .transform((written, context) => {
    const [from, to, more] = written.split(/\s*[-–]\s*/).map(minutesOf);
    if (from === undefined || to === undefined || more !== undefined || !(from + to >= 0)) {
      context.addIssue({ code: 'custom', message: SPAN_WORDS });
      return z.NEVER;
    }
    return spellOf(EVERY_DAY, from, to);
  })
  .describe('A span of local time on every day, such as "22:30-06:00"');

export const spellShape = {
  days: days().optional(),
  months: months().optional(),
  from: clock('Start'),
  to: clock('End; at or before the start it means the next day'),
};

const spellSection = section(spellShape, 'A span of local time on some days').transform(
  ({ days, months, from, to }) => spellOf(days, from, to, months),
);

/** Spells of local time: `always`, `never`, one span, or a list of spans and stretches. */
export const hours = (says: string) =>
  either(
    [
      choice(['always', 'never'], 'All the time, or not at all'),
      span,
      spellSection,
      list(
        either([span, spellSection], SPAN_WORDS, 'One span of time'),
        HOURS_WORDS,
        'Several spans of time',
      ),
    ],
    HOURS_WORDS,
    says,
  ).transform((given) => {
    if (given === 'always') return [spellOf(EVERY_DAY, 0, DAY)];
    if (given === 'never') return [];
    return Array.isArray(given) ? given : [given];
  });

/**
 * A spell as `control/household.ts` wants it: the end counts from the midnight before the start; on
 * every day and in all months where nobody says otherwise.
 */
export function spellOf(days: number | undefined, from: number, to: number, months = ALL_YEAR) {
  const seldom = months === ALL_YEAR ? {} : { months };
  return { days: days ?? EVERY_DAY, ...seldom, from, to: to > from ? to : to + DAY };
}

/** Whether a spell leaves out no minute of the year. */
export const isAlways = ({ days, months, from, to }: ReturnType<typeof spellOf>): boolean =>
  days === EVERY_DAY && (months ?? ALL_YEAR) === ALL_YEAR && to - from === DAY;

/** A minute of the week, counted from Monday midnight, in words: "monday at 06:30". */
export function momentOfWeek(minute: number): string {
  const day = DAYS[Math.floor(minute / DAY)] ?? '';
  const time = `${Math.floor((minute % DAY) / 60)}`.padStart(2, '0');
  return `${day} at ${time}:${`${minute % 60}`.padStart(2, '0')}`;
}

export const EVERY_DAY = 0b1111111;
export const DAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const GROUPS: Readonly<Record<string, number>> = {
  'every day': EVERY_DAY,
  weekdays: 0b0011111,
  weekends: 0b1100000,
};
const DAY = 1440;
const CLOCK_WORDS = 'a local time such as "06:30"';
const SPAN_WORDS = 'a span of local time such as "22:30-06:00"';
const HOURS_WORDS =
  'always, never, a span such as "22:30-06:00", or a list of { days, months, from, to }';
const DAYS_WORDS = 'every day, weekdays, weekends, or day names such as [Mon, Wed]';
