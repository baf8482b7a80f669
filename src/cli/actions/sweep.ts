import { extname } from 'node:path';
import type { SweepResult } from '../../report/sweep/sweep-result.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import { visibleValue } from '../../units/visible-text.ts';
import type { Io } from '../io.ts';
import { keepApart } from '../keep-apart.ts';
import { type LoadedPlans, loadPlans } from '../load-plans.ts';
import type { LaidOutSweep, SweepChoices } from '../sweep/lay-out-sweep.ts';
import type { OpenPart } from '../sweep/merge-sweep.ts';
import { openSweepBook, type SweepBook, type SweepPart } from '../sweep/sweep-book.ts';
import type { NamedBargain } from '../sweep/sweep-part-file.ts';
import { UsageError } from '../usage-error.ts';

/** What may be said beside the scenario's name. */
export interface SweepOptions extends SweepChoices {
  readonly output: string;
  readonly weather?: string;
  readonly resume?: true;
  /** Picture of the frontier to write. */
  readonly plot?: string | undefined;
  /** Whether the files are parts to be put together. */
  readonly merge?: true;
}

/** Run a scenario at many values of its inputs, or a stock of homes, and write the figures of all. */
export async function sweep(
  io: Io,
  files: readonly string[],
  options: SweepOptions,
): Promise<void> {
  if (options.merge) return mergeSweep(io, files, options);
  const [path, more] = files;
  if (path === undefined || more !== undefined) {
    throw new UsageError('error: one scenario at a time; several files only with --merge');
  }
  if (options.vary.length === 0 && options.homes === undefined) {
    throw new UsageError('error: nothing to vary: give --vary, --homes or both');
  }
  const csv = formatOf(options.output) === 'csv';
  const loaded = await loadPlans(io, path, {
    ...options,
    plans: options.plans ?? 'first',
    check: 'named',
  });
  const { layOutSweep } = await import('../sweep/lay-out-sweep.ts');
  const laidOut = await layOutSweep(io, loaded, options);
  const unfinished = `${options.output}.unfinished`;
  if (options.plot !== undefined && (options.homes !== undefined || options.shard !== undefined)) {
    throw new UsageError('error: --plot sets all runs of one home against each other');
  }
  await refuseOutputs(io, options, [unfinished], [...loaded.read, options.homes]);
  const lines = await io.openLines(unfinished, options.resume ? 'go on' : 'new');
  let written = false;
  try {
    const pointers = laidOut.layout.axes.map(({ pointer }) => pointer);
    const book = await openSweepBook(lines, unfinished, laidOut.part, csv ? pointers : null);
    await runAll(io, loaded, laidOut, book, options);
    await io.writeWhole(options.output, book.pieces());
    written = true;
    const { troubles, currency } = book;
    const { layout, part } = laidOut;
    await tell(
      io,
      {
        ...{ file: options.output, shard: part.shard, runs: book.count(), currency: currency() },
        failed: troubles.length,
        bargains: layout.homes === null && part.shard[1] === 1 ? book.bargains : [],
      },
      options.plot,
    );
    refuseTroubles(book.troubles, options.output);
  } finally {
    if (written) await lines.remove();
    else await lines.close();
  }
}

async function runAll(
  io: Io,
  loaded: LoadedPlans,
  laidOut: LaidOutSweep,
  book: SweepBook,
  { output, homes }: SweepOptions,
): Promise<void> {
  const { runSweep } = await import('../sweep/run-sweep.ts');
  const left = laidOut.part.of - book.count();
  const workers = left > FEW && io.startWorkers !== null ? await io.startWorkers(left) : null;
  const lists = formatOf(output) === 'ndjson';
  try {
    await runSweep(io, laidOut, book, { loaded, workers, homesFile: homes ?? '', lists });
  } finally {
    await workers?.close();
  }
}

/** Put the parts of a sweep together. */
async function mergeSweep(
  io: Io,
  files: readonly string[],
  { output, plot }: SweepOptions,
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
  const { readSweepFile } = await import('../sweep/sweep-part-file.ts');
  const { checkParts, mergedPieces, runsOfParts } = await import('../sweep/merge-sweep.ts');
  const parts: OpenPart[] = [];
  try {
    for (const file of files) {
      const lines = await io.openLines(file, 'read');
      parts.push({ file, lines, holds: await readSweepFile(lines, file, format) });
    }
    checkParts(parts, output);
    await io.writeWhole(output, mergedPieces(parts));
    const runs = runsOfParts(parts);
    const stock = runs.some(({ home }) => home !== '');
    const bargains = runs.flatMap(({ bargain }) => (bargain === null ? [] : [bargain]));
    await tell(
      io,
      {
        ...{ file: output, shard: [1, 1], runs: runs.length },
        failed: runs.length - bargains.length,
        currency: parts.find(({ holds }) => holds.currency !== '')?.holds.currency ?? '',
        bargains: stock ? [] : bargains,
      },
      plot,
    );
  } finally {
    for (const { lines } of parts) await lines.close();
  }
}

/** Refuse outputs that are read, that meet, or that cannot be written. */
async function refuseOutputs(
  io: Io,
  { output, plot }: Pick<SweepOptions, 'output' | 'plot'>,
  besides: readonly string[],
  read: readonly (string | undefined)[],
): Promise<void> {
  const option = '-o, --output <file>';
  const outputs = [output, ...besides].map((path) => ({ option, path }));
  const picture = { option: '--plot <file.svg>', path: plot };
  await keepApart(io, [...outputs, picture], read, true);
  await io.requireWritable(output);
  if (plot !== undefined) await io.requireWritable(plot);
}

/** What a file that was written holds. */
interface Written {
  readonly file: string;
  readonly shard: SweepPart['shard'];
  readonly runs: number;
  readonly failed: number;
  readonly currency: string;
  /** Runs to set against each other; none where they are of several homes or of a part. */
  readonly bargains: readonly NamedBargain[];
}

async function tell(
  io: Io,
  { bargains, ...written }: Written,
  plot: string | undefined,
): Promise<void> {
  const { sweepText } = await import('../../report/sweep/sweep-text.ts');
  const { frontier, knee } = await import('../../studies/sweep/frontier.ts');
  const front = frontier(bargains);
  const bend = knee(front);
  if (plot !== undefined) {
    const { frontierPicture } = await import('../../report/sweep/frontier-picture.ts');
    const { currency } = written;
    const at = bend?.at ?? null;
    await io.writeWhole(plot, await frontierPicture({ currency, bargains, front, bend: at }));
  }
  io.out(`${sweepText({ ...written, frontier: front, knee: bend }, io.width)}\n`);
}

/** What kind of file a name asks for. @throws UsageError for an ending that is neither */
function formatOf(output: string): 'csv' | 'ndjson' {
  const end = extname(output).toLowerCase();
  if (end === '.csv') return 'csv';
  if (end === '.ndjson') return 'ndjson';
  throw new UsageError(
    `error: option '-o, --output <file>' argument '${visibleValue(output)}' is invalid. End it in .csv or .ndjson.`,
  );
}

function refuseTroubles(troubles: readonly SweepResult[], file: string): void {
  if (troubles.length === 0) return;
  const problems = troubles.map(({ run, problem }): Problem => {
    const place = { file, line: 0, column: 0, where: `run ${run}`, hint: '' };
    return { ...place, expected: 'a home that can be run', got: problem ?? '' };
  });
  throw new InputProblems(problems.sort((a, b) => (a.where < b.where ? -1 : 1)));
}

/** A thread takes as long to start as a good part of a run: so many are over sooner in this one. */
const FEW = 2;
