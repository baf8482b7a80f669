import { DAYS, EVERY_DAY, minutesOf } from '../../scenario/clock-words.ts';
import { isAiredByMotors } from '../../scenario/edits/add-airing.ts';
import { daysAlone, daysInWords } from '../../scenario/notices/days-alone.ts';
import { andList } from '../../units/word-list.ts';
import type { FindSetup } from './finding.ts';

/** By time of day the days of the week on which nobody is there to open a window; only times with such days. */
export type Alone = ReadonlyMap<string, readonly number[]>;

/**
 * One to four times of day at which windows may be opened, from the fewest on: none at which nobody is at
 * home on any day of the week, but all of them where motors open the windows.
 */
export function airingTimes({
  prepared: { household },
  raw,
}: Pick<FindSetup, 'prepared' | 'raw'>): {
  readonly tried: readonly (readonly string[])[];
  readonly alone: Alone;
} {
  const alone = new Map<string, readonly number[]>();
  for (const at of isAiredByMotors(raw) ? [] : TIMES.at(-1)!) {
    const days = daysAlone(household, EVERY_DAY, minutesOf(at));
    if (days.length > 0) alone.set(at, days);
  }
  const tried = TIMES.map((times) => times.filter((at) => !isNever(alone.get(at))));
  const once = new Map(tried.map((at) => [at.join(), at]));
  once.delete('');
  return { tried: [...once.values()], alone };
}

/** What is said of times that are left out, and of those of a routine at which windows stay shut on some days. */
export function aloneWords(alone: Alone, routine: readonly string[]): string[] {
  const out = [...alone].flatMap(([time, days]) => (isNever(days) ? [time] : []));
  const some = [...alone].filter(([time, days]) => routine.includes(time) && !isNever(days));
  const those = out.length === 1 ? 'that time was' : 'those times were';
  return [
    ...(out.length === 0
      ? []
      : [
          `Nobody is ever at home at ${andList(out)} to open a window: ${those} left out, as long as no motor does (by: motor).`,
        ]),
    ...some.map(
      ([time, days]) =>
        `At ${time} nobody is at home ${daysInWords(days)}: windows stay shut then.`,
    ),
  ];
}

const isNever = (days: readonly number[] = []): boolean => days.length === DAYS.length;

/** On getting up and before going to bed first, then in between. */
const TIMES: readonly (readonly string[])[] = [
  ['07:30'],
  ['07:30', '22:00'],
  ['07:30', '18:00', '22:00'],
  ['07:30', '13:00', '18:00', '22:00'],
];
