import { MINUTES_PER_DAY } from '../../units/time-units.ts';
import { minutesOf } from '../clock-words.ts';
import { READING_UNITS, type Reading } from '../model/readings.ts';
import { items, mapping, readTolerantly, textOf } from './tolerant-readers.ts';

/**
 * Whether two lists of conditions may be met at one time, as far as their words tell.
 *
 * They may not where both speak of one reading of one room and no level satisfies both. A condition
 * that has been met goes on down (or up) to its clear level, and that counts.
 */
export function canBothHold(a: unknown, b: unknown): boolean {
  const [ofFirst, ofSecond] = [minutesMet(a), minutesMet(b)];
  if (!ofFirst.some((met, minute) => met === 1 && ofSecond[minute] === 1)) return false;
  const [first, second] = [rangesOf(a), rangesOf(b)];
  for (const [what, range] of first) {
    const other = second.get(what);
    if (other === undefined) continue;
    if (Math.max(range.low, other.low) >= Math.min(range.high, other.high)) return false;
  }
  return true;
}

/** For each minute of the day 1 where no condition's time of day speaks against it. */
function minutesMet(value: unknown): Uint8Array {
  const met = new Uint8Array(MINUTES_PER_DAY).fill(1);
  for (const { after, before } of items(value).map((one) => mapping(one))) {
    const [from, to] = [minutesOf(textOf(after)), minutesOf(textOf(before))];
    const pastMidnight = from > to;
    for (let minute = 0; minute < met.length; minute++) {
      const [early, late] = [minute < from, minute >= to]; // false where there is no such time
      if (pastMidnight ? early && late : early || late) met[minute] = 0;
    }
  }
  return met;
}

interface Range {
  readonly low: number;
  readonly high: number;
}

/** What each reading has to lie between, by its room and name. */
function rangesOf(value: unknown): Map<string, Range> {
  const ranges = new Map<string, Range>();
  for (const condition of items(value).map((one) => mapping(one))) {
    const { reading, windows, presence, room = '', clear } = condition;
    const add = (what: string, low: number, high: number) => {
      const known = ranges.get(what) ?? ALL;
      ranges.set(what, {
        low: Number.isNaN(low) ? known.low : Math.max(known.low, low),
        high: Number.isNaN(high) ? known.high : Math.min(known.high, high),
      });
    };
    if (windows === 'open' || presence === 'somebody') add(placed(room, condition), 0.5, 1);
    if (windows === 'closed' || presence === 'nobody') add(placed(room, condition), 0, 0.5);
    const read = 'price' in condition ? 'price' : textOf(reading);
    if (read === '') continue;
    const level = (key: 'over' | 'under') => {
      const own = levelOf(condition[key], read);
      const cleared = levelOf(clear, read);
      return Number.isNaN(own) || Number.isNaN(cleared) ? own : cleared;
    };
    add(`${room} ${read}`, level('over'), level('under'));
  }
  return ranges;
}

/** A level of a reading; that of a species which the scenario names stands in the species' own unit. */
function levelOf(written: unknown, reading: string): number {
  if (Object.hasOwn(READING_UNITS, reading)) {
    return readTolerantly(written, READING_UNITS[reading as Reading]);
  }
  return Number.parseFloat(textOf(written));
}

const placed = (room: unknown, condition: object): string =>
  `${room} ${'windows' in condition ? 'windows' : 'presence'}`;

const ALL: Range = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
