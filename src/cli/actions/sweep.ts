import { extname } from 'node:path';
import type { SweepResult } from '../../report/sweep/sweep-result.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import { visibleValue } from '../../units/visible-text.ts';
import type { Io } from '../io.ts';
import { keepApart } from '../keep-apart.ts';
import { type LoadedPlans, loadPlans } from '../load-plans.ts';
import type { LaidOutSweep, SweepChoices } from '../sweep/lay-out-sweep.ts';
import { openSweepBook, type SweepBook } from '../sweep/sweep-book.ts';
import { UsageError } from '../usage-error.ts';

/** What may be said beside the scenario's name. */
export interface SweepOptions extends SweepChoices {
  readonly output: string;
  readonly weather?: string;
  readonly resume?: true;
}

/** Run a scenario at many values of its inputs, or a stock of homes, and write the figures of all. */
export async function sweep(io: Io, path: string, options: SweepOptions): Promise<void> {
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
  const output = { option: '-o, --output <file>', path: options.output };
  const beside = { ...output, path: unfinished };
  await keepApart(io, [output, beside], [...loaded.read, options.homes], true);
  await io.requireWritable(options.output);
  const lines = await io.openLines(unfinished, options.resume ? 'go on' : 'new');
  let written = false;
  try {
    const pointers = laidOut.layout.axes.map(({ pointer }) => pointer);
    const book = await openSweepBook(lines, unfinished, laidOut.part, csv ? pointers : null);
    await runAll(io, loaded, laidOut, book, options);
    await io.writeWhole(options.output, book.pieces());
    written = true;
    io.out(`${await summary(io, laidOut, book, options)}\n`);
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

async function summary(
  io: Io,
  { layout, part }: LaidOutSweep,
  book: SweepBook,
  { output }: SweepOptions,
): Promise<string> {
  const { sweepText } = await import('../../report/sweep/sweep-text.ts');
  const { frontier, knee } = await import('../../studies/sweep/frontier.ts');
  const { sweepRun } = await import('../../studies/sweep/sweep-layout.ts');
  const alone = layout.homes === null && part.shard[1] === 1;
  const front = alone ? frontier(book.bargains) : [];
  const at = knee(front);
  const named = <T extends { readonly run: number }>(bargain: T) => ({
    ...bargain,
    ...{ plan: sweepRun(layout, bargain.run).plan, values: sweepRun(layout, bargain.run).values },
  });
  return sweepText(
    {
      file: output,
      runs: book.count(),
      failed: book.troubles.length,
      shard: part.shard,
      currency: book.currency(),
      frontier: front.map(named),
      knee: at === null ? null : { ...at, at: named(at.at) },
    },
    io.width,
  );
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
