import { clockSeconds } from '../../units/clock-seconds.ts';

/** Turns the text of a time into a number, NaN where it is none. */
export interface TimeReader {
  readonly read: (text: string) => TimeReading | null;
  /** End of the sentence "expected ...". */
  readonly expected: string;
}

interface TimeReading {
  /** Counted like UTC seconds. [s on the clock of the text] */
  readonly clock: number;
  /** How far that clock is ahead of UTC; null where the text does not say. [s] */
  readonly ahead: number | null;
}

/** Reads ISO 8601, epoch counts, or a pattern of YYYY MM DD hh mm ss A; null for a pattern without a date. */
export function timeReader(format: string): TimeReader | null {
  if (format === 'iso') return { read: readIso, expected: ISO_EXPECTED };
  if (format === 'epoch s') return epoch(1, 'seconds');
  if (format === 'epoch ms') return epoch(1000, 'milliseconds');
  const parts = [...format.matchAll(TOKEN)].map(([token]) => token);
  if (!['YYYY', 'MM', 'DD', 'hh'].every((needed) => parts.includes(needed))) return null;
  const pattern = new RegExp(
    `^${format.replaceAll(SPECIAL, '\\$&').replaceAll(TOKEN, groupOf)}$`,
    'i',
  );
  return { read: (text) => readPattern(pattern, parts, text), expected: `a time as ${format}` };
}

function readIso(text: string): TimeReading | null {
  const found = ISO.exec(text);
  if (found === null) return null;
  const [, year, month, day, hour, minute, second, zone] = found;
  const clock = clockSeconds(+year!, +month!, +day!, +hour!, +minute!, +(second ?? 0));
  return clock === null ? null : { clock, ahead: zone === undefined ? null : zoneSeconds(zone) };
}

function zoneSeconds(zone: string): number {
  if (zone === 'Z' || zone === 'z') return 0;
  const minutes = +zone.slice(1, 3) * 60 + (zone.length > 3 ? +zone.slice(-2) : 0);
  return (zone[0] === '-' ? -60 : 60) * minutes;
}

function readPattern(pattern: RegExp, parts: readonly string[], text: string): TimeReading | null {
  const found = pattern.exec(text);
  if (found === null) return null;
  const value = (token: string) => found[parts.indexOf(token) + 1] ?? '0';
  const half = parts.includes('A') ? value('A').toUpperCase() : '';
  let hour = +value('hh');
  if (half !== '') {
    if (hour < 1 || hour > 12) return null;
    hour = (hour % 12) + (half === 'PM' ? 12 : 0);
  }
  const clock = clockSeconds(
    +value('YYYY'),
    +value('MM'),
    +value('DD'),
    hour,
    parts.includes('mm') ? +value('mm') : 0,
    parts.includes('ss') ? +value('ss') : 0,
  );
  return clock === null ? null : { clock, ahead: null };
}

function epoch(perSecond: number, name: string): TimeReader {
  return {
    read: (text) => {
      const clock = Number(text) / perSecond;
      return text !== '' && Math.abs(clock) <= FAR ? { clock, ahead: 0 } : null;
    },
    expected: `${name} since 1970`,
  };
}

function groupOf(token: string): string {
  if (token === 'YYYY') return '(\\d{4})';
  return token === 'A' ? '(AM|PM)' : '(\\d{1,2})';
}

const TOKEN = /YYYY|MM|DD|hh|mm|ss|\bA\b/g;
const FAR = 253_402_300_799; // the end of the year 9999, as far as four digits go [s]
const SPECIAL = /[.*+?^${}()|[\]\\]/g;
const ISO =
  /^(\d{4})-(\d\d)-(\d\d)[T ](\d\d):(\d\d)(?::(\d\d)(?:[.,]\d+)?)?\s*(Z|[+-]\d\d(?::?\d\d)?)?$/i;
const ISO_EXPECTED = 'a time such as 2023-01-31T05:00Z';
