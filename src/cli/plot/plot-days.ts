import { isoDay } from '../../units/iso-time.ts';
import { type LocalClock, localDay, toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import { UsageError } from '../usage-error.ts';

/** First and last local day, both included, counted from 1970-01-01. */
export interface LocalDays {
  readonly first: number;
  readonly last: number;
}

/** Words of the call that say which days are meant. */
export interface AskedDays {
  readonly from?: string;
  readonly to?: string;
}

/** The local days of a simulated period, those of which it has only some hours included. */
export function daysOfPeriod(
  { start, hours }: { readonly start: number; readonly hours: number },
  clock: LocalClock,
): LocalDays {
  const dayOf = (utc: number): number => localDay(toLocal(clock, utc));
  return { first: dayOf(start), last: dayOf(start + (hours - 1) * 3600) };
}

/**
 * The days that `--from` and `--to` name; where one is left out the period decides that side.
 *
 * Days come once a year. In a period that has one twice, the first is meant, and of `--to` the first
 * that does not come before `--from`.
 *
 * @returns null where neither is given
 * @throws UsageError with everything that is wrong with the two
 */
export function askedDays({ from, to }: AskedDays, period: LocalDays): LocalDays | null {
  if (from === undefined && to === undefined) return null;
  const refusals: string[] = [];
  const refuse = (option: string, word: string, why: string): null => {
    refusals.push(`error: option '--${option} <MM-DD>' argument '${word}' is invalid. ${why}`);
    return null;
  };
  const named = (option: string, word: string): number | null => {
    if (!/^\d\d-\d\d$/.test(word)) return refuse(option, word, 'Give a day as MM-DD, like 01-09.');
    const day = dayNamed(word, period.first, period.last);
    return day ?? refuse(option, word, `The period has the days ${spanText(period)}.`);
  };
  const first = from === undefined ? period.first : named('from', from);
  const earliest = to === undefined ? period.last : named('to', to);
  let last = earliest;
  if (to !== undefined && first !== null && earliest !== null) {
    last = dayNamed(to, first, period.last);
    if (last === null) {
      refuse('from', from!, `In the period ${spanText(period)} it comes after --to ${to}.`);
    }
  }
  if (first === null || last === null) throw new UsageError(refusals.join('\n'));
  return { first, last };
}

/** Refuse days where no picture is asked for, which nothing would be done with. */
export function refuseDaysAlone({ from, to }: AskedDays): void {
  const alone = Object.entries({ from, to }).filter(([, word]) => word !== undefined);
  if (alone.length === 0) return;
  throw new UsageError(
    alone
      .map(([option]) => `error: option '--${option} <MM-DD>' needs option '--plot <room>'`)
      .join('\n'),
  );
}

/** The first day of that name from one day to another; null for none. */
function dayNamed(name: string, first: number, last: number): number | null {
  for (let day = first; day <= last; day++) if (dateOf(day).slice(5) === name) return day;
  return null;
}

const spanText = ({ first, last }: LocalDays): string => `${dateOf(first)} to ${dateOf(last)}`;

/** "2023-01-09" */
const dateOf = (day: number): string => isoDay(day * SECONDS_PER_DAY);
