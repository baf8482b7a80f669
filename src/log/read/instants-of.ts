import { isoMinute } from '../../units/iso-time.ts';
import type { LogOptions } from './log-options.ts';
import type { LogProblems } from './log-problems.ts';
import { type Ordered, orderReadings } from './order-readings.ts';
import type { RawRows } from './raw-rows.ts';
import { saysUtc, type TableLayout } from './sniff-table.ts';
import { wallToUtc, winterClock } from './wall-to-utc.ts';

/** When the rows of a file were taken, in the order of time. */
export interface Instants {
  /** [s UTC] */
  readonly times: Float64Array;
  /** Numbers of the rows; null for all as they stand. */
  readonly rows: Int32Array | null;
  /** Clock that was taken for theirs, in words. */
  readonly zone: string;
  readonly notes: readonly string[];
}

/** Instants of rows, ordered, each once; null, with a problem, where the clock was set anew. */
export function instantsOf(
  raw: RawRows,
  inUtc: boolean,
  layout: TableLayout,
  options: LogOptions,
  name: string,
  problems: LogProblems,
): Instants | null {
  const clock = raw.clock.subarray(0, raw.count);
  const wall = inUtc || layout.timeCells.some((cell) => saysUtc(layout.names[cell]!));
  const told = wall ? inText(clock) : onClock(clock, options);
  const same = (a: number, b: number) =>
    raw.values.every((values) => Object.is(values[a], values[b]));
  const ordered = orderReadings(told.times, same);
  if (ordered.reset >= 0) {
    const [row, before] = [ordered.reset, ordered.reset - 1];
    problems.at(raw.line[row]!, layout.timeCells[0]!, `reset ${name}`, {
      where: layout.names[layout.timeCells[0]!]!,
      expected: `a time after ${isoMinute(clock[before]!)}`,
      got: `${isoMinute(clock[row]!)}: the logger's clock was set anew`,
      hint: 'put these rows right, or leave them out',
    });
    return null;
  }
  const { rows } = ordered;
  const times = rows === null ? told.times : Float64Array.from(rows, (row) => told.times[row]!);
  return { times, rows, zone: told.zone, notes: [...told.notes, ...orderNotes(ordered)] };
}

interface Told {
  readonly times: Float64Array;
  readonly zone: string;
  readonly notes: readonly string[];
}

const inText = (times: Float64Array): Told => ({ times, zone: 'as the times say', notes: [] });

/** Instants of a wall clock; where it shows times that its zone skips, it kept winter time. */
function onClock(readings: Float64Array, { clock, zone, zoneIsLoggers }: LogOptions): Told {
  if (clock === null) {
    return { times: readings, zone: 'not said, taken as UTC', notes: [NO_ZONE] };
  }
  const backwards = readings.length > 1 && readings[0]! > readings.at(-1)!;
  const ascending = backwards ? readings.slice().reverse() : readings;
  const { utc, skipped, firstSkipped, repeated } = wallToUtc(clock, ascending);
  if (skipped === 0) {
    const notes =
      repeated === 0
        ? []
        : [
            `${times(repeated)} the readings run through an hour twice, as where summer time ends; both are kept.`,
          ];
    return { times: backwards ? utc.reverse() : utc, zone, notes };
  }
  const skips = `${count(skipped)} at times that ${zone} skips, first ${isoMinute(firstSkipped)}`;
  const fixed = winterClock(clock, readings[0]!);
  const ahead = fixed.offset[0]!;
  if (zoneIsLoggers) {
    const notes = [
      `${skips}: taken as the instant of the jump. Does this logger change its clock? If it keeps winter time all year, say --zone ${hoursAhead(ahead)}.`,
    ];
    return { times: backwards ? utc.reverse() : utc, zone, notes };
  }
  return {
    times: readings.map((reading) => reading - ahead),
    zone: `${offsetWords(ahead)} all year`,
    notes: [`${skips}: so the logger keeps winter time, ${offsetWords(ahead)}, all year.`],
  };
}

function orderNotes({ doubled, unlike, repeatedHour, order }: Ordered): string[] {
  const notes: string[] = [];
  if (order === 'descending') notes.push('The newest row comes first; rows were turned round.');
  if (order === 'none') notes.push('Rows are in no order of time; they were sorted.');
  if (doubled > 0)
    notes.push(
      `${count(doubled)} ${doubled === 1 ? 'stands twice and counts' : 'stand twice and count'} once.`,
    );
  if (unlike > 0) {
    notes.push(
      `${count(unlike)} ${unlike === 1 ? 'has' : 'have'} the time of another with other values; the later row counts.`,
    );
  }
  if (repeatedHour > 0) {
    notes.push(
      `${count(repeatedHour)} ${repeatedHour === 1 ? 'runs' : 'run'} through an hour a second time, as where summer time ends; they were left out. Say the zone to keep them.`,
    );
  }
  return notes;
}

/** Distance of a clock from UTC in words, such as "UTC+01:00". @param seconds  ahead of UTC */
const offsetWords = (seconds: number): string => `UTC${hoursAhead(seconds)}`;

/** Distance of a clock from UTC, such as "+01:00". @param seconds  ahead of UTC */
function hoursAhead(seconds: number): string {
  const minutes = Math.abs(seconds) / 60;
  const two = (n: number) => String(Math.floor(n)).padStart(2, '0');
  return `${seconds < 0 ? '-' : '+'}${two(minutes / 60)}:${two(minutes % 60)}`;
}

const count = (n: number): string => `${n} ${n === 1 ? 'reading' : 'readings'}`;
const times = (n: number): string => (n === 1 ? 'Once' : `${n} times`);

const NO_ZONE =
  'The times do not say their zone and are taken as UTC; say it with --zone, such as --zone Europe/London.';
