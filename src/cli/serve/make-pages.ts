import type { Document } from '../../report/page/document-frame.ts';
import { SERVED_STYLES } from '../../report/served/served-styles.ts';
import { STANDING } from '../../report/served/standing.ts';
import type { PlanVariant } from '../../studies/plan-variant.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import type { Io } from '../io.ts';
import { livingOf } from '../load/living-of.ts';
import type { LoadedPlans } from '../load/load-plans.ts';
import { fewAtOnce } from '../runs/few-at-once.ts';
import { ownCheck } from '../runs/own-check.ts';
import { startSimulations } from '../runs/simulations.ts';
import type { Workers } from '../runs/start-workers.ts';
import type { RunStore } from './run-store.ts';
import { fullerWords } from './standing-words.ts';

/** The files have changed meanwhile: what is being made of them is no longer wanted. */
export class Superseded extends Error {
  constructor() {
    super('superseded');
    this.name = 'Superseded';
  }
}

/** A page, and how much of the home it tells. */
export interface MadePage extends Document {
  readonly plans: number;
  /** Whether all plans and pictures are in it. */
  readonly whole: boolean;
}

/** What pages are made with, again and again. */
export interface PageMaker {
  readonly io: Io;
  readonly workers: Workers | null;
  readonly store: RunStore;
}

/**
 * Pages of a scenario: first a quick one of the baseline and the plan after it, then all of it.
 *
 * @param over  whether the files have changed meanwhile
 * @throws Superseded where they have
 * @throws InputProblems where a plan cannot be run
 */
export async function* makePages(
  maker: PageMaker,
  loaded: LoadedPlans,
  over: () => boolean,
): AsyncGenerator<MadePage> {
  const names = loaded.plans.map(({ plan }) => plan.plan);
  const watch = await watchOf(maker, loaded, over);
  const { quickStudy } = await import('../../studies/quick-study.ts');
  for (const [plans, drawn] of [[names.slice(0, FIRST), false] as const, [names, true] as const]) {
    const { scenario, files } = loaded;
    const study = await quickStudy({ scenario, files, plans, set: [], watch });
    if (over()) throw new Superseded();
    const { page, policy } = await pageOf(maker.io, loaded, study, drawn);
    yield { page, policy, plans: plans.length, whole: drawn };
  }
}

/** How a plan is run in this weather, unless it has been. */
async function watchOf(
  { workers, store, io }: PageMaker,
  { scenario, files, weather, weatherText }: LoadedPlans,
  over: () => boolean,
) {
  const { prepareVariant } = await import('../../studies/plan-variant.ts');
  const setup = { file: scenario.file, weather };
  const { watch } = await startSimulations(workers, setup, { done: () => {} });
  store.begin(weatherText);
  const one = fewAtOnce(workers?.threads ?? 1, async (variant: PlanVariant) => {
    await io.pause(0); // lets a change be seen between two runs
    if (over()) throw new Superseded();
    const plan = prepareVariant(scenario, files, variant);
    const ran = await store.of(plan, () => watch(plan));
    ownCheck([ran.measures]);
    return ran;
  });
  return one;
}

async function pageOf(
  io: Io,
  loaded: LoadedPlans,
  study: ReportStudy,
  drawn: boolean,
): Promise<Document> {
  const { reportPage } = await import('../../report/page/report-page.ts');
  const { text, weather } = loaded;
  return reportPage({
    ...{ study, text, weather, date: io.today(), version: io.version },
    script: await io.readAsset('report/page-script.js'),
    living: await livingOf(io, loaded, study, []),
    sha256: await io.loadSha256(),
    served: {
      script: await io.readAsset('report/follow-script.js'),
      ...{ styles: SERVED_STYLES, standing: STANDING, drawn },
      fuller: fullerWords(study.scenario.file, study.options.length),
    },
  });
}

const FIRST = 2;
