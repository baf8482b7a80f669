import { inPart, partCount } from '../../studies/sweep/sweep-layout.ts';
import { InputProblems } from '../../units/problem.ts';
import type { Io } from '../io.ts';
import type { SweepPart } from './sweep-book.ts';
import { formatOf } from './sweep-outputs.ts';
import { readSweepFile, type SweepFile } from './sweep-part-file.ts';

/**
 * What a file holds if it is this part of this sweep already, all runs made: a job that is started
 * again after its end has nothing left to do. Null where it is anything else, or is not there.
 */
export async function finishedPart(
  io: Io,
  file: string,
  { sweep, of, shard: [part, parts] }: SweepPart,
): Promise<SweepFile | null> {
  try {
    const lines = await io.openLines(file, 'read');
    try {
      const holds = await readSweepFile(lines, file, formatOf(file));
      const whole = holds.runs.size === partCount(of, part, parts);
      const own = [...holds.runs.keys()].every((run) => inPart(run, part, parts));
      return holds.sweep === sweep && whole && own ? holds : null;
    } finally {
      await lines.close();
    }
  } catch (error) {
    if (error instanceof InputProblems) return null;
    throw error;
  }
}
