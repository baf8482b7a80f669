import { nearestHint } from '../../units/nearest-name.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import { andList } from '../../units/word-list.ts';
import { intervalsOf } from '../intervals.ts';
import type { Log, LoggedSeries } from '../log.ts';
import { factsOf } from '../quantities.ts';
import { joinSeries } from './join-series.ts';
import type { LogOptions, ReadLog, UnderstoodFile } from './log-options.ts';
import { type LogFile, readLogFile } from './read-log-file.ts';

/** One file of a log. */
export interface LogText {
  readonly file: string;
  /** All of it. */
  readonly text: string;
}

/**
 * A log from the texts of its files: sniffed, put in the order of time and into SI units. Gaps stay
 * gaps.
 *
 * @throws InputProblems with everything that is wrong with all files, each with its place
 */
export function readLog(texts: readonly LogText[], options: LogOptions): ReadLog {
  const problems: Problem[] = [];
  const read = texts.map(({ file, text }) => readLogFile(text, file, options, problems));
  const files = read.flatMap((each) => (each === null ? [] : [each.understood]));
  if (problems.length === 0) problems.push(...unknownNames(read, options, texts[0]?.file ?? ''));
  const series = joinSeries(read.flatMap((each) => each?.series ?? []));
  if (problems.length === 0 && series.length === 0) problems.push(nothingIn(files, options.rooms));
  if (problems.length === 0 && series.length > 0 && series.every(standsStill))
    problems.push(stuck(files));
  if (problems.length > 0) throw new InputProblems(problems);
  const starts = series.map(({ times }) => times[0]!);
  const ends = series.map(({ times }) => times.at(-1)!);
  const end = Math.max(...ends);
  const log: Log = {
    series: series.map((one) => heldTo(asReported(one), end)),
    ...{ start: Math.min(...starts), end },
  };
  return { log, files: withAbsent(files, read, options) };
}

/**
 * Power that is reported on a change stays as it was told until the next: on a straight line a heater that
 * is off for hours would draw half of what it draws next.
 */
const asReported = (series: LoggedSeries): LoggedSeries =>
  series.reading === 'instant' &&
  factsOf(series.quantity)?.unit === 'W' &&
  intervalsOf(series).uneven
    ? { ...series, reading: 'state' }
    : series;

/** What reports changes alone and has none to report: a window that was shut stays so to the end of the log. */
const heldTo = (series: LoggedSeries, end: number): LoggedSeries =>
  series.reading === 'state' && series.times.at(-1)! < end
    ? { ...series, holdsUntil: end }
    : series;

function nothingIn(files: readonly UnderstoodFile[], rooms: readonly string[]): Problem {
  const why = files.flatMap(({ leftOut }) => leftOut.map(({ name, why }) => `${name}: ${why}`));
  return {
    ...{ file: files[0]?.file ?? 'log', line: 0, column: 0, where: '' },
    expected: 'a column with readings of temperature, humidity or something else that is known',
    got: why.length === 0 ? 'none' : `none (${why.slice(0, MOST_SAID).join('; ')})`,
    hint: `say what columns are under "log: readings:" of a scenario${rooms.length === 0 ? '' : `, whose rooms are ${rooms.join(', ')}`}`,
  };
}

/** One and the same value in a day's worth of readings and more. */
const standsStill = ({ values }: LoggedSeries): boolean =>
  values.length >= 24 && values.every((value) => value === values[0]);

const stuck = (files: readonly UnderstoodFile[]): Problem => ({
  ...{ file: files[0]?.file ?? 'log', line: 0, column: 0, where: '' },
  expected: 'readings that change',
  got: 'one and the same value in all rows of every column',
  hint: 'is the sensor stuck, or its battery empty?',
});

/** A problem for each reading that a person named, that no file has and one of the file's own names may be. */
function unknownNames(
  read: readonly (LogFile | null)[],
  { readings }: LogOptions,
  file: string,
): Problem[] {
  const names = read.flatMap((each) => each?.names ?? []);
  const free = names.filter((name) => !Object.hasOwn(readings, name));
  return absentNames(names, readings).flatMap((name) => {
    const hint = nearestHint(name, free);
    if (hint === '') return [];
    return [
      {
        ...{ file, line: 0, column: 0, where: 'columns and names', hint },
        expected: `"${name}", as the scenario calls it`,
        got: names.slice(0, MOST_NAMES).join(', '),
      },
    ];
  });
}

const absentNames = (names: readonly string[], readings: LogOptions['readings']): string[] =>
  Object.keys(readings).filter((name) => !names.includes(name));

/** The first file with a note on names that are of files which were not given. */
function withAbsent(
  files: readonly UnderstoodFile[],
  read: readonly (LogFile | null)[],
  { readings }: LogOptions,
): UnderstoodFile[] {
  const absent = absentNames(
    read.flatMap((each) => each?.names ?? []),
    readings,
  );
  if (absent.length === 0) return [...files];
  const more = absent.length > MOST_NAMES ? [`${absent.length - MOST_NAMES} more`] : [];
  const words = andList([...absent.slice(0, MOST_NAMES).map((name) => `"${name}"`), ...more]);
  const note = `The scenario also names ${words}, which ${absent.length === 1 ? 'is' : 'are'} in no file that was given.`;
  return files.map((each, k) => (k === 0 ? { ...each, notes: [...each.notes, note] } : each));
}

const MOST_SAID = 6;
const MOST_NAMES = 12;
