import { visibleValue } from '../../units/visible-text.ts';
import type { Io } from '../io.ts';
import { UsageError } from '../usage-error.ts';
import { checkParts, mergedPieces, type OpenPart, runsOfParts } from './merge-sweep.ts';
import { formatOf, refuseOutputs, type SweepOutputs } from './sweep-outputs.ts';
import { readSweepFile } from './sweep-part-file.ts';
import { tellSweep } from './tell-sweep.ts';

/** Put the parts of a sweep together, and tell what they come to. @throws InputProblems, UsageError */
export async function mergeSweep(
  io: Io,
  files: readonly string[],
  { output, plot }: SweepOutputs,
): Promise<void> {
  const format = formatOf(output);
  for (const file of files) {
    if (formatOf(file) !== format) {
      throw new UsageError(
        `error: --merge: ${visibleValue(file)} is not .${format}, as ${visibleValue(output)} is`,
      );
    }
  }
  await refuseOutputs(io, { output, plot }, [], files);
  const parts: OpenPart[] = [];
  try {
    for (const file of files) {
      const lines = await io.openLines(file, 'read');
      parts.push({ file, lines, holds: await readSweepFile(lines, file, format) });
    }
    checkParts(parts, output);
    await io.writeWhole(output, mergedPieces(parts));
    const runs = runsOfParts(parts);
    const bargains = runs.flatMap(({ bargain }) => (bargain === null ? [] : [bargain]));
    await tellSweep(
      io,
      {
        ...{ file: output, shard: [1, 1], runs: runs.length },
        failed: runs.length - bargains.length,
        currency: parts.find(({ holds }) => holds.currency !== '')?.holds.currency ?? '',
        bargains,
      },
      plot,
    );
  } finally {
    for (const { lines } of parts) await lines.close();
  }
}
