import type { Log } from '../log/log.ts';
import type { ReadLog } from '../log/read/log-options.ts';
import type { Io } from './io.ts';
import { tellNote } from './tell-note.ts';

/** Say how each file of a log was taken: its rows and readings, and what was left out. */
export async function tellLog(io: Io, files: ReadLog['files']): Promise<void> {
  for (const { file, columns, rows, leftOut } of files) {
    const told = columns.map(({ quantity, where }) => `${quantity} of ${where}`).join(', ');
    const left = leftOut.length === 0 ? '' : `; left out: ${leftOutWords(leftOut)}`;
    await tellNote(io, `${file}: ${rows} rows, ${told}${left}`);
  }
}

/**
 * Say only what somebody would not expect of a log: what was left out, which units were told by numbers
 * alone, and what speaks against the readings of some rooms.
 *
 * @param rooms  none where readings are taken as they are
 */
export async function tellOddLog(
  io: Io,
  { log, files }: ReadLog,
  rooms: readonly string[],
): Promise<void> {
  for (const { file, columns, leftOut, notes } of files) {
    if (leftOut.length > 0) await tellNote(io, `${file}: left out: ${leftOutWords(leftOut)}`);
    const byNumbers = columns.filter(({ unitBy }) => unitBy === 'numbers');
    for (const { name, unit } of byNumbers) {
      await tellNote(io, `${file}: "${name}" is taken for ${unit}, as its numbers show`);
    }
    for (const text of notes) await tellNote(io, `${file}: ${text}`);
  }
  for (const text of await speaksAgainst(log, rooms)) await tellNote(io, text);
}

async function speaksAgainst(log: Log, rooms: readonly string[]): Promise<string[]> {
  const { logChecks } = await import('../log/describe/log-checks.ts');
  const { seriesFacts } = await import('../log/describe/series-facts.ts');
  const series = log.series.filter(({ room }) => room === null || rooms.includes(room));
  const facts = new Map(series.map((one) => [one, seriesFacts(one)]));
  const found = logChecks({ ...log, series }, facts);
  return found.filter(({ id }) => id !== 'short').map(({ text }) => text);
}

const leftOutWords = (leftOut: ReadLog['files'][number]['leftOut']): string =>
  leftOut.map(({ name, why }) => `"${name}" (${why})`).join(', ');
