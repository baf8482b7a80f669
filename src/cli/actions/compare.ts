import { cautionsOfAll } from '../../report/cautions-of-all.ts';
import type { Comparison } from '../../studies/compare/compare.ts';
import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { type LoadedPlans, loadPlans } from '../load-plans.ts';
import { ownCheck } from '../own-check.ts';
import { startProgress } from '../progress.ts';
import type { Workers } from '../start-workers.ts';

/** What may be said beside the scenario's name. */
export interface CompareOptions {
  readonly plans?: string[];
  readonly set: readonly string[];
  readonly weather?: string;
  readonly json?: true;
  readonly csv?: true;
}

/** Simulate plans and print them side by side. */
export async function compare(io: Io, path: string, options: CompareOptions): Promise<void> {
  const comparison = await compareAll(io, path, options);
  if (options.json) {
    io.out(jsonText(comparison));
  } else if (options.csv) {
    const { compareCsv } = await import('../../report/compare-csv.ts');
    io.out(compareCsv(comparison));
  } else {
    const { compareTables, compareTitle } = await import('../../report/tables/compare-tables.ts');
    const { answerInWords } = await import('../../studies/compare/answer-in-words.ts');
    const { remarkList } = await import('../../report/tables/remark-list.ts');
    const { answerText } = await import('../../report/tables/answer-text.ts');
    const cautions = remarkList(cautionsOfAll(comparison.plans), io.width);
    const parts = [
      compareTitle(comparison),
      answerText(answerInWords(comparison), io.width),
      compareTables(comparison, io.width),
      ...(cautions === '' ? [] : [`Cautions\n${cautions}`]),
    ];
    io.out(`${parts.join('\n\n')}\n`);
  }
  ownCheck(comparison.plans);
}

async function compareAll(io: Io, path: string, options: CompareOptions): Promise<Comparison> {
  const threads: Workers[] = [];
  const expect = async (runs: number) => {
    if (runs > FEW && io.startWorkers !== null) threads.push(await io.startWorkers(runs));
  };
  try {
    const plans = options.plans ?? 'all';
    const loaded = await loadPlans(io, path, { ...options, plans, check: 'named', expect });
    return await runAll(io, loaded, threads[0] ?? null);
  } finally {
    for (const workers of threads) await workers.close();
  }
}

async function runAll(io: Io, loaded: LoadedPlans, workers: Workers | null): Promise<Comparison> {
  const { comparePlans } = await import('../../studies/compare/compare-plans.ts');
  const { startSimulations } = await import('../simulations.ts');
  const { scenario, weather, plans } = loaded;
  const byName = new Map(plans.map(({ plan }) => [plan.plan, plan]));
  const hours = plans.map(({ period }) => period.hours);
  const progress = await startProgress(io, hours, 'plans');
  try {
    const told = { observe: progress.observe, done: progress.next };
    const { run } = await startSimulations(workers, { file: scenario.file, weather }, told);
    return await comparePlans([...byName.keys()], async (name) => {
      const plan = byName.get(name)!;
      const { purchases, discountRate } = plan;
      return { measures: await run(plan), purchases, discountRate };
    });
  } finally {
    progress.stop();
  }
}

/** A thread takes as long to start as a good part of a run: so many are over sooner in this one. */
const FEW = 2;
