import { capital } from '../units/capital.ts';

/**
 * Bits of the months that "May", "Oct-Apr", "all year" or a list of such name; January is bit 0.
 * NaN for an unknown name and for none at all.
 */
export function monthsOf(written: string | readonly string[]): number {
  const parts = [written].flat();
  if (parts.length === 0 || unknownIn(parts) !== undefined) return Number.NaN;
  return parts.reduce((bits, part) => bits | bitsOf(part), 0);
}

/** The months after those of some bits. */
export const nextMonths = (bits: number): number =>
  ((bits << 1) | (bits >> (MONTHS.length - 1))) & ALL_YEAR;

/** Months of the other half of the globe in the same season. */
export const sixMonthsLater = (bits: number): number => ((bits << 6) | (bits >> 6)) & ALL_YEAR;

/** Months as they are written: "Oct-Apr", "May", "Jan, Mar-Apr", "all year". */
export function monthWords(bits: number): string {
  if (bits === ALL_YEAR) return 'all year';
  const has = (m: number): boolean => (bits & (1 << (m % 12))) !== 0;
  const spans: string[] = [];
  for (let m = 0; m < 12; m++) {
    if (!has(m) || has(m + 11)) continue;
    let last = m;
    while (has(last + 1)) last++;
    spans.push(last === m ? shortName(m) : `${shortName(m)}-${shortName(last)}`);
  }
  return spans.join(', ');
}

function shortName(m: number): string {
  const name = MONTHS[m % 12]!;
  return capital(name.slice(0, 3));
}

/** A span goes on past December where its end comes first. */
function bitsOf(part: string): number {
  if (isAllYear(part)) return ALL_YEAR;
  const [first, last = first] = ends(part).map(monthOf) as [number, number?];
  let bits = 1 << first;
  for (let m = first; m !== last; ) {
    m = (m + 1) % MONTHS.length;
    bits |= 1 << m;
  }
  return bits;
}

/** The first of some words that names no months. */
export function unknownIn(parts: readonly string[]): string | undefined {
  for (const part of parts.filter((text) => !isAllYear(text))) {
    const names = ends(part);
    if (names.length > 2) return part;
    const unknown = names.find((name) => monthOf(name) < 0);
    if (unknown !== undefined) return unknown;
  }
  return undefined;
}

const ends = (part: string): string[] => part.trim().split(/\s*[-–]\s*/);

/** Full name or its first letters, three or more; -1 where it is none. */
function monthOf(name: string): number {
  const plain = name.toLowerCase();
  return MONTHS.findIndex((full) => plain.length >= 3 && full.startsWith(plain));
}

const isAllYear = (part: string): boolean => part.trim().toLowerCase() === 'all year';

export const ALL_YEAR = 0b1111_1111_1111;
export const MONTHS = [
  ...['january', 'february', 'march', 'april', 'may', 'june', 'july', 'august', 'september'],
  ...['october', 'november', 'december'],
];
