import type { SweepResult } from '../../report/sweep/sweep-result.ts';
import { withoutLists } from '../../report/sweep/sweep-result.ts';
import { prepareVariant } from '../../studies/plan-variant.ts';
import { inHome } from '../../studies/sweep/check-homes.ts';
import {
  inPart,
  partCount,
  type SweepLayout,
  type SweepRun,
  sweepRun,
} from '../../studies/sweep/sweep-layout.ts';
import { InputProblems, problemText } from '../../units/problem.ts';
import type { Io } from '../io.ts';
import type { LoadedPlans } from '../load/load-plans.ts';
import { ownCheck } from '../runs/own-check.ts';
import { startSimulations } from '../runs/simulations.ts';
import type { Workers } from '../runs/start-workers.ts';
import type { LaidOutSweep } from './lay-out-sweep.ts';
import type { SweepBook } from './sweep-book.ts';
import { startSweepProgress } from './sweep-progress.ts';

/** What runs need besides the sweep itself. */
export interface SweepWork {
  readonly loaded: LoadedPlans;
  /** Threads; null where all runs are made in this one. */
  readonly workers: Workers | null;
  /** Name of the file of homes, for messages. */
  readonly homesFile: string;
  /** Whether lists are kept among the figures. */
  readonly lists: boolean;
}

/**
 * Make all runs of a part that its book does not have yet. A run that cannot be made goes into the
 * book with its reason, and the others go on.
 */
export async function runSweep(
  io: Io,
  { layout, part }: LaidOutSweep,
  book: SweepBook,
  work: SweepWork,
): Promise<void> {
  const { scenario, files, weather } = work.loaded;
  const [which, parts] = part.shard;
  const total = partCount(part.of, which, parts);
  const progress = await startSweepProgress(io, total, book.count());
  const setup = { file: scenario.file, weather };
  const { run } = await startSimulations(work.workers, setup, { done: () => {} });
  let last = 0;
  let stopped = false;

  function next(): SweepRun | null {
    while (!stopped && ++last <= part.of) {
      if (inPart(last, which, parts) && !book.has(last)) return sweepRun(layout, last);
    }
    return null;
  }

  async function resultOf(one: SweepRun): Promise<SweepResult> {
    const { number, home, plan, values } = one;
    const about = { sweep: part.sweep, run: number, of: part.of, home, plan, values };
    try {
      const measures = await run(prepareVariant(scenario, files, one.variant));
      ownCheck([measures]);
      const figures = work.lists ? measures : withoutLists(measures);
      return { ...about, problem: null, figures };
    } catch (error) {
      const problem = reasonOf(error, one, layout, work.homesFile);
      if (problem === null) throw error;
      return { ...about, problem, figures: null };
    }
  }

  /** One run after the other; several of these keep every thread busy. */
  async function lane(): Promise<void> {
    for (let one = next(); one !== null; one = next()) {
      const result = await resultOf(one);
      if (!stopped) await book.add(result);
      progress.done();
    }
  }

  try {
    const lanes = work.workers === null ? 1 : AHEAD * work.workers.threads;
    await Promise.all(Array.from({ length: lanes }, lane));
  } finally {
    stopped = true;
    progress.stop();
  }
}

/** Why a run has no figures, on one line; null where the program itself is at fault. */
function reasonOf(error: unknown, run: SweepRun, layout: SweepLayout, file: string): string | null {
  if (!(error instanceof InputProblems)) return null;
  const home = layout.homes?.find(({ name }) => name === run.home);
  const placed = error.problems.map((p) => (home === undefined ? p : inHome(p, home, file)));
  return placed.map(problemText).join('; ');
}

/** Runs that are prepared or under way for each thread, so that none waits for the next. */
const AHEAD = 2;
