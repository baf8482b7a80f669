import type { SweepResult } from '../../report/sweep/sweep-result.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import type { Io } from '../io.ts';
import { type LoadedPlans, loadPlans } from '../load/load-plans.ts';
import type { LaidOutSweep, SweepChoices } from '../sweep/lay-out-sweep.ts';
import type { SweepBook, SweepPart } from '../sweep/sweep-book.ts';
import { formatOf, refuseOutputs } from '../sweep/sweep-outputs.ts';
import type { SweepFile } from '../sweep/sweep-part-file.ts';
import { UsageError } from '../usage-error.ts';

/** What may be said beside the scenario's name. */
export interface SweepOptions extends SweepChoices {
  readonly output: string;
  readonly weather?: string;
  readonly resume?: true;
  /** Most threads to use. */
  readonly threads?: number;
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
  if (options.merge) {
    const { mergeSweep } = await import('../sweep/merge-files.ts');
    return mergeSweep(io, files, options);
  }
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
  if (options.resume) {
    const { finishedPart } = await import('../sweep/finished-part.ts');
    const there = await finishedPart(io, options.output, laidOut.part);
    if (there !== null) return tellFinished(io, there, laidOut.part, options);
  }
  const { openSweepBook } = await import('../sweep/sweep-book.ts');
  const lines = await io.openLines(unfinished, options.resume ? 'go on' : 'new');
  let written = false;
  try {
    const pointers = laidOut.layout.axes.map(({ pointer }) => pointer);
    const book = await openSweepBook(lines, unfinished, laidOut.part, csv ? pointers : null);
    await runAll(io, loaded, laidOut, book, options);
    await io.writeWhole(options.output, book.pieces());
    written = true;
    const { troubles, bargains, currency } = book;
    const { shard } = laidOut.part;
    const { tellSweep } = await import('../sweep/tell-sweep.ts');
    await tellSweep(
      io,
      {
        ...{ file: options.output, shard, runs: book.count(), currency: currency() },
        failed: troubles.length,
        bargains: shard[1] === 1 ? bargains : [],
      },
      options.plot,
    );
    refuseTroubles(book.troubles, options.output);
  } finally {
    if (written) await lines.remove();
    else await lines.close();
  }
}

/** Nothing is left to do. */
async function tellFinished(
  io: Io,
  { runs, currency }: SweepFile,
  { shard }: SweepPart,
  { output, plot }: SweepOptions,
): Promise<void> {
  const { tellSweep } = await import('../sweep/tell-sweep.ts');
  const bargains = [...runs.values()].flatMap(({ bargain }) => (bargain === null ? [] : [bargain]));
  const failed = runs.size - bargains.length;
  const told = { file: output, shard, runs: runs.size, failed, currency };
  await tellSweep(io, { ...told, bargains: shard[1] === 1 ? bargains : [] }, plot);
}

async function runAll(
  io: Io,
  loaded: LoadedPlans,
  laidOut: LaidOutSweep,
  book: SweepBook,
  { output, homes, threads = Number.POSITIVE_INFINITY }: SweepOptions,
): Promise<void> {
  const { runSweep } = await import('../sweep/run-sweep.ts');
  const { partCount } = await import('../../studies/sweep/sweep-layout.ts');
  const [part, parts] = laidOut.part.shard;
  const left = partCount(laidOut.part.of, part, parts) - book.count();
  const most = Math.min(left, threads);
  const workers = left > FEW ? await io.startWorkers(most) : null;
  const lists = formatOf(output) === 'ndjson';
  try {
    await runSweep(io, laidOut, book, { loaded, workers, homesFile: homes ?? '', lists });
  } finally {
    await workers?.close();
  }
}

function refuseTroubles(troubles: readonly SweepResult[], file: string): void {
  if (troubles.length === 0) return;
  const inOrder = troubles.toSorted((a, b) => a.run - b.run);
  const problems = inOrder.map(({ run, problem }): Problem => {
    const place = { file, line: 0, column: 0, where: `run ${run}`, hint: '' };
    return { ...place, expected: 'a home that can be run', got: problem ?? '' };
  });
  throw new InputProblems(problems);
}

/** A thread takes as long to start as a good part of a run: so many are over sooner in this one. */
const FEW = 2;
