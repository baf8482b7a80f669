import { clockSeconds } from '../../units/clock-seconds.ts';
import type { DateOrder } from './log-options.ts';

/** How the times of a file are written. */
export type TimeForm = DateOrder | 'epoch s' | 'epoch ms';

/** Reads many times of one file; remembers the date, which seldom changes from row to row. */
export interface TimeTextReader {
  /** Seconds on the clock of the text, counted like UTC; NaN where it is no time. [s] */
  read(text: string): number;
  /** How far that clock is ahead of UTC by the text just read; NaN where it did not say. [s] */
  ahead: number;
}

export function timeTextReader(form: TimeForm): TimeTextReader {
  if (form === 'epoch s' || form === 'epoch ms') return epochReader(form === 'epoch s' ? 1 : 1000);
  let date = '';
  let midnight = Number.NaN;
  const reader = {
    ahead: Number.NaN,
    read(text: string): number {
      const parts = PARTS.exec(text);
      if (parts === null) return Number.NaN;
      if (parts[1] !== date) {
        date = parts[1]!;
        midnight = midnightOf(date, form);
      }
      const zone = parts[6];
      reader.ahead = zone === undefined ? Number.NaN : zoneSeconds(zone);
      return midnight + timeOfDay(parts[2], parts[3], parts[4], parts[5]);
    },
  };
  return reader;
}

/** Numbers of a date in the order in which they are written, and whether the year comes first. */
export function dateNumbers(
  text: string,
): { readonly first: number; readonly second: number; readonly yearFirst: boolean } | null {
  const parts = PARTS.exec(text);
  const date = parts === null ? null : DATE.exec(parts[1]!);
  if (date === null) return null;
  if (Number.isNaN(monthOf(date[3]!))) return null;
  const named = Number.isNaN(Number(date[3]));
  // A month in letters stands in the middle and leaves no doubt.
  return {
    first: named ? 31 : Number(date[1]),
    second: monthOf(date[3]!),
    yearFirst: date[1]!.length === 4,
  };
}

/** Whether a text is a date with a time of day. */
export const isDateTime = (text: string): boolean => PARTS.exec(text)?.[2] !== undefined;
/** Whether a text is a date alone. */
export const isDate = (text: string): boolean => PARTS.test(text) && !isDateTime(text);
/** Whether a text is a time of day alone. */
export const isTimeOfDay = (text: string): boolean => TIME_ALONE.test(text);

/** Which epoch count a text may be, of an instant between 1990 and 2060; null for none. */
export function epochForm(text: string): 'epoch s' | 'epoch ms' | null {
  if (!/^\d{9,13}(\.\d+)?$/.test(text)) return null;
  const count = Number(text);
  if (count >= EPOCH_FROM && count < EPOCH_TO) return 'epoch s';
  return count >= EPOCH_FROM * 1000 && count < EPOCH_TO * 1000 ? 'epoch ms' : null;
}

function epochReader(perSecond: number): TimeTextReader {
  return {
    ahead: 0,
    read: (text) => (/^\d+(\.\d+)?$/.test(text) ? Number(text) / perSecond : Number.NaN),
  };
}

function midnightOf(text: string, form: DateOrder): number {
  const date = DATE.exec(text);
  if (date === null) return Number.NaN;
  const [a, b, c] = [Number(date[1]), monthOf(date[3]!), Number(date[4])];
  const fourFirst = date[1]!.length === 4;
  const year = fourFirst || form === 'year first' ? a : c;
  const monthFirst = form === 'month first' && !fourFirst && !Number.isNaN(Number(date[3]));
  const month = monthFirst ? a : b;
  const day = monthFirst ? b : year === a && (fourFirst || form === 'year first') ? c : a;
  return clockSeconds(year < 100 ? 2000 + year : year, month, day, 0, 0) ?? Number.NaN;
}

function timeOfDay(hour = '0', minute = '0', second = '0', half?: string): number {
  let h = Number(hour);
  const [m, s] = [Number(minute), Number(second)];
  if (half !== undefined) {
    if (h < 1 || h > 12) return Number.NaN;
    h = (h % 12) + (half.toLowerCase().startsWith('p') ? 12 : 0);
  }
  if (h > 24 || m > 59 || s > 59 || (h === 24 && m + s > 0)) return Number.NaN;
  return h * 3600 + m * 60 + s;
}

function zoneSeconds(zone: string): number {
  if (/^(z|utc|gmt)$/i.test(zone)) return 0;
  const minutes = Number(zone.slice(1, 3)) * 60 + (zone.length > 3 ? Number(zone.slice(-2)) : 0);
  return (zone[0] === '-' ? -60 : 60) * minutes;
}

/** Number of a month in digits or in English letters; NaN for none. */
function monthOf(text: string): number {
  const number = Number(text);
  if (!Number.isNaN(number)) return number;
  const k = MONTHS.indexOf(text.slice(0, 3).toLowerCase());
  return k < 0 ? Number.NaN : k + 1;
}

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const DATE = /^(\d{1,4})([-./ ])(\d{1,2}|[A-Za-z]{3,9})\.?\2(\d{1,4})$/;
const PARTS =
  /^(\d{1,4}[-./ ](?:\d{1,2}|[A-Za-z]{3,9})\.?[-./ ]\d{1,4})(?:(?:T|,? +)(\d{1,2}):(\d\d)(?::(\d\d)(?:[.,:]\d+)?)? ?([AaPp]\.?[Mm]\.?)? ?(Z|z|UTC|GMT|[+-]\d\d(?::?\d\d)?)?)?$/;
const TIME_ALONE = /^\d{1,2}:\d\d(:\d\d([.,]\d+)?)? ?([AaPp]\.?[Mm]\.?)?$/;
const EPOCH_FROM = 631_152_000; // 1990 [s]
const EPOCH_TO = 2_840_140_800; // 2060 [s]
