import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { settingWords } from '../../scenario/yaml/settings.ts';
import { InputProblems } from '../../units/problem.ts';
import { latinHypercube } from '../latin-hypercube.ts';
import { type PlanVariant, withSettings } from '../plan-variant.ts';
import { allOf } from '../run-failures.ts';
import type { DrawnPlans } from './drawn-figures.ts';
import { atShare, type SampledInput } from './sampled-inputs.ts';

export interface SampledDoubtSetup {
  /** The baseline first. */
  readonly plans: readonly PlanVariant[];
  readonly inputs: readonly SampledInput[];
  /** Told of among the results, and not drawn. */
  readonly leftAside?: readonly SampledInput[];
  readonly samples: number;
  readonly seed: number;
  /** How many years of weather there are; the first is the one for the figures as they are. */
  readonly years: number;
  /** Time step of the plans. [s] */
  readonly step: number;
  readonly run: (variant: PlanVariant, year: number) => PlanMeasures | Promise<PlanMeasures>;
}

/** Runs of plans with every doubtful input drawn at once. */
export interface SampledRuns {
  /** Each plan with every input as it is taken to be. */
  readonly asIs: readonly PlanMeasures[];
  /** Time step of the draws. [s] */
  readonly step: number;
  /** Draws that are a home in every plan. */
  readonly kept: readonly Draw[];
  /** How many were left out, because in one of the plans their values are no home together. */
  readonly impossible: number;
}

/** One draw of all doubtful inputs; `own` is null in most, and in all where the plans' own step is that of the draws. */
interface Draw extends DrawnPlans<PlanMeasures> {
  /** Of each input, how far from its low to its high, from 0 to 1. */
  readonly shares: readonly number[];
  /** Number of the year of weather. */
  readonly year: number;
}

/**
 * Draws all doubtful inputs at once, as a Latin hypercube, and runs every plan with each draw, so
 * that what is common to plans cancels in their difference. Each input goes evenly from its low to
 * the value it is taken to be in half of the samples, and on to its high in the other half.
 *
 * Thirty draws or more take steps of half an hour where the plans have shorter ones, and one in twenty,
 * but three at least, are run in the plans' own step too, so that what the longer step does on the mean
 * can be taken off.
 *
 * @throws InputProblems as the first sample does, where none is a home
 */
export async function sampledRuns(setup: SampledDoubtSetup): Promise<SampledRuns> {
  const { plans, inputs, samples, seed, years, run } = setup;
  const step = samples < FEW ? setup.step : Math.max(setup.step, DRAW_STEP);
  const longer = plans.map((plan) => (step === setup.step ? plan : inSteps(plan, step)));
  const runAll = (list: readonly PlanVariant[], shares: readonly number[], year: number) =>
    orProblems(list.map(async (plan, p) => run(withShares(plan, p, inputs, shares), year)));
  const asked = latinHypercube(samples, inputs.length + 1, seed).map(async (shares) => {
    const year = Math.floor(shares.at(-1)! * years);
    const runs = await runAll(longer, shares, year);
    return runs instanceof InputProblems ? runs : { shares, year, runs };
  });
  // Together, so that a fault in one leaves no other unheard.
  const [asIs, drawn] = await Promise.all([
    Promise.all(plans.map(async (plan) => run(plan, 0))),
    Promise.all(asked),
  ]);
  const found = drawn.flatMap((sample) => (sample instanceof InputProblems ? [] : [sample]));
  if (found.length === 0) throw drawn[0];
  const every = Math.min(EVERY, Math.ceil(found.length / LEAST));
  const kept = found.map(async ({ shares, year, runs }, k): Promise<Draw> => {
    const again = step === setup.step || k % every !== 0 ? null : runAll(plans, shares, year);
    const own = await again;
    return { shares, year, runs, own: own instanceof InputProblems ? null : own };
  });
  return { asIs, step, kept: await Promise.all(kept), impossible: samples - found.length };
}

/** All that were asked for, or why the first of them that is no home is none. */
const orProblems = (
  asked: readonly Promise<PlanMeasures>[],
): Promise<PlanMeasures[] | InputProblems> =>
  allOf(asked).catch((error: unknown) => {
    if (error instanceof InputProblems) return error;
    throw error;
  });

const inSteps = (plan: PlanVariant, step: number): PlanVariant =>
  withSettings(plan, [settingWords('/step', String(step / 60))]);

function withShares(
  plan: PlanVariant,
  p: number,
  inputs: readonly SampledInput[],
  shares: readonly number[],
): PlanVariant {
  const set = inputs.flatMap(({ path, in: ranges }, d) => {
    const range = ranges[p] ?? null;
    return range === null ? [] : [settingWords(path, String(atShare(range, shares[d]!)))];
  });
  return withSettings(plan, set);
}

/** Where the plans have no longer one themselves. [s] */
const DRAW_STEP = 1800;
/** Of fewer draws too few would be run in both steps. */
const FEW = 30;
/** How many draws there are to one that is run in the plans' own step too, and how many of those at least. */
const EVERY = 20;
const LEAST = 3;
