import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { Comparison } from '../../studies/compare/compare.ts';
import type { SampledDoubt } from '../../studies/doubts/sampled-doubt.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import { doubtedPlans, doubtOf, firstYear, tellDoubt } from '../doubt.ts';
import type { Io } from '../io.ts';
import { jsonText } from '../json-text.ts';
import { type LoadedPlans, loadPlans } from '../load/load-plans.ts';
import { ownCheck } from '../runs/own-check.ts';
import { startProgress } from '../runs/progress.ts';
import type { Workers } from '../runs/start-workers.ts';

/** What may be said beside the scenario's name. */
export interface CompareOptions {
  readonly plans?: string[];
  readonly set: readonly string[];
  readonly weather?: readonly string[];
  readonly doubt?: number;
  readonly seed: number;
  readonly rooms?: true;
  readonly rules?: true;
  readonly all?: true;
  readonly json?: true;
  readonly csv?: true;
}

/** Simulate plans and print them side by side. */
export async function compare(io: Io, path: string, options: CompareOptions): Promise<void> {
  const { comparison, runs, failed, loaded, doubt } = await compareAll(io, path, options);
  if (options.json) {
    io.out(jsonText(doubt === null ? comparison : { ...comparison, doubt }));
  } else if (options.csv) {
    const { compareCsv } = await import('../../report/compare-csv.ts');
    io.out(compareCsv(comparison));
  } else {
    const { compareText } = await import('../../report/tables/compare-text.ts');
    const { comparisonAnswers } = await import('../../studies/answers/comparison-answers.ts');
    const { rooms, rules, all } = options;
    const part = all ? 'all' : rooms ? 'rooms' : rules ? 'rules' : 'answer';
    const answers = comparisonAnswers(runs, [...failed.keys()]);
    const { clock } = loaded.plans[0]!.plan.household;
    const proposals = await proposalsBeside(loaded, options, comparison);
    const alike = optionsAlike(loaded, options);
    const print = { part, width: io.width, clock, proposals, alike } as const;
    io.out(`${compareText(comparison, answers, print)}\n`);
    if (doubt !== null) await tellDoubt(io, loaded, doubt);
  }
  ownCheck(comparison.plans);
  if (failed.size > 0) throw new InputProblems([...failed.values()].flat());
}

/** How many plans a report would try besides; none is run here, nor where there is nothing to hold them against. */
async function proposalsBeside(
  { scenario, plans }: LoadedPlans,
  { set }: CompareOptions,
  comparison: Comparison,
): Promise<number> {
  const { proposalsFor } = await import('../../studies/options.ts');
  const [baseline, ran] = [plans[0]!.plan.plan, comparison.plans[0]];
  return ran?.plan === baseline ? proposalsFor({ scenario, set }, baseline, ran).length : 0;
}

/** Options by which a report makes its proposals from what was compared here. */
function optionsAlike(
  { scenario, plans }: LoadedPlans,
  { set, weather }: CompareOptions,
): string[] {
  return [
    ...(plans[0]!.plan.plan === scenario.plans[0]!.name ? [] : ['--plans']),
    ...(set.length > 0 ? ['--set'] : []),
    ...(weather === undefined ? [] : ['--weather']),
  ];
}

/** Plans with their figures, and what comes of setting them side by side. */
interface Compared {
  readonly comparison: Comparison;
  readonly runs: readonly { readonly prepared: PreparedPlan; readonly measures: PlanMeasures }[];
  /** Plans that could not be run to their end, and why. */
  readonly failed: ReadonlyMap<string, readonly Problem[]>;
  readonly loaded: LoadedPlans;
  /** Null where it was not asked for. */
  readonly doubt: SampledDoubt | null;
}

async function compareAll(io: Io, path: string, options: CompareOptions): Promise<Compared> {
  const threads: Workers[] = [];
  const expect = async (runs: number) => {
    const all = options.doubt === undefined ? runs : Number.POSITIVE_INFINITY;
    const started = all > FEW ? await io.startWorkers(all) : null;
    if (started !== null) threads.push(started);
  };
  try {
    const plans = options.plans ?? 'all';
    const { set } = options;
    const weather = firstYear(options);
    const loaded = await loadPlans(io, path, { set, weather, plans, check: 'named', expect });
    // Files that another program reads are whole or not at all.
    const whole = options.json === true || options.csv === true;
    const runAll = await readyToRun(io, loaded, threads[0] ?? null, whole);
    // While threads run the plans, this one looks for what is in doubt.
    const [compared, doubted] = await Promise.all([runAll(), doubtedPlans(loaded, options)]);
    if (doubted === null) return { ...compared, loaded, doubt: null };
    // A plan that cannot be run as it is would leave no draw.
    const { failed, runs } = compared;
    const ran = { ...loaded, plans: loaded.plans.filter(({ plan }) => !failed.has(plan.plan)) };
    const inDoubt = failed.size === 0 ? doubted : (await doubtedPlans(ran, options))!;
    const asIs = runs.map(({ measures }) => measures);
    const doubt = await doubtOf(io, ran, inDoubt, asIs, options, threads[0]);
    return { ...compared, loaded, doubt };
  } finally {
    for (const workers of threads) await workers.close();
  }
}

/** What runs all plans and sets them side by side; threads have the runs as soon as it is called. */
async function readyToRun(
  io: Io,
  loaded: LoadedPlans,
  workers: Workers | null,
  whole: boolean,
): Promise<() => Promise<Omit<Compared, 'loaded' | 'doubt'>>> {
  const { comparePlans } = await import('../../studies/compare/compare-plans.ts');
  const { startSimulations } = await import('../runs/simulations.ts');
  const { scenario, weather, plans } = loaded;
  const byName = new Map(plans.map(({ plan }) => [plan.plan, plan]));
  const hours = plans.map(({ period }) => period.hours);
  const progress = await startProgress(io, hours, 'plans');
  const told = { observe: progress.observe, done: progress.next };
  const { run } = await startSimulations(workers, { file: scenario.file, weather }, told);
  const failed = new Map<string, readonly Problem[]>();
  const leaveOut = (name: string, failure: unknown): boolean => {
    if (whole || !(failure instanceof InputProblems)) return false;
    failed.set(name, failure.problems);
    return true;
  };
  const simulated = async (name: string) => {
    const plan = byName.get(name)!;
    const { purchases, discountRate } = plan;
    return { measures: await run(plan), purchases, discountRate };
  };
  return async () => {
    try {
      const comparison = await comparePlans([...byName.keys()], simulated, leaveOut);
      const runs = comparison.plans.map((measures) => ({
        ...{ measures, prepared: byName.get(measures.plan)! },
      }));
      return { comparison, runs, failed };
    } finally {
      progress.stop();
    }
  };
}

/** A thread takes as long to start as a good part of a run: so many are over sooner in this one. */
const FEW = 2;
