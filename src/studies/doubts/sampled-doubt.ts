import { coldSpotHours } from '../../measures/comfort/room-hours.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { planFigures } from '../effects/plan-figures.ts';
import { doubtFlips } from './doubt-flips.ts';
import { drawnDifferences, drawnFigures } from './drawn-figures.ts';
import {
  type BeatDoubt,
  type DifferenceDoubt,
  type Figure,
  type FigureDoubt,
  figureDoubt,
  type PlanDoubt,
} from './figure-doubt.ts';
import { type SampledDoubtSetup, type SampledRuns, sampledRuns } from './sampled-runs.ts';

/** What is not known exactly, tried all at once, and what it does to the figures of plans. */
export interface SampledDoubt {
  readonly baseline: string;
  readonly seed: number;
  /** Samples whose figures count. */
  readonly samples: number;
  /** Samples left out, because in one of the plans their values are no home together. */
  readonly impossible: number;
  /** Time step of most of them; what it does to those that are run in the plans' own is taken off. [min] */
  readonly step_minutes: number;
  /** Years of weather among them. */
  readonly years: number;
  readonly inputs: readonly DoubtedInput[];
  /** Pointers to doubtful numbers that were not drawn, because giving them changes more than them. */
  readonly left_aside: readonly string[];
  /** The baseline first. */
  readonly plans: readonly PlanDoubt[];
  /** One for every plan but the baseline. */
  readonly differences: readonly DifferenceDoubt[];
}

interface DoubtedInput {
  readonly path: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

/** All but the single inputs that turn something round. */
export type DrawnDoubt = Omit<SampledDoubt, 'differences'> & {
  readonly differences: readonly Omit<DifferenceDoubt, 'flips'>[];
};

/**
 * Draws all doubtful inputs at once, runs every plan with each draw, and looks for the value of one
 * input alone that turns round which plan costs less.
 *
 * @throws InputProblems as `sampledRuns`
 */
export async function sampledDoubt(setup: SampledDoubtSetup): Promise<SampledDoubt> {
  const doubt = doubtOfRuns(setup, await sampledRuns(setup));
  const differences = doubt.differences.map(
    async (each, k): Promise<DifferenceDoubt> => ({
      ...each,
      flips: await doubtFlips(setup, k + 1, each.money),
    }),
  );
  return { ...doubt, differences: await Promise.all(differences) };
}

/** What draws come to: the figures of plans, and of their differences from the first. */
export function doubtOfRuns(
  { plans, inputs, leftAside = [], seed, years }: SampledDoubtSetup,
  runs: SampledRuns,
): DrawnDoubt {
  const { asIs, kept, impossible } = runs;
  const doubtOf = (now: number, figures: readonly number[]): FigureDoubt =>
    figureDoubt({
      ...{ asIs: now, figures },
      inputs: inputs.map(({ path }, d) => ({ path, shares: kept.map(({ shares }) => shares[d]!) })),
      years: years > 1 ? kept.map(({ year }) => year) : [],
    });
  const planOf = (name: Figure, p: number): FigureDoubt =>
    doubtOf(FIGURES[name](asIs[p]!), drawnFigures(kept, p, FIGURES[name]));
  const beatOf = (name: Figure, p: number): BeatDoubt => {
    const figure = FIGURES[name];
    const drawn = drawnDifferences(kept, p, figure);
    const share = (holds: (value: number) => boolean) => drawn.filter(holds).length / drawn.length;
    return {
      ...doubtOf(figure(asIs[p]!) - figure(asIs[0]!), drawn),
      less: share((value) => value < 0),
      equal: share((value) => value === 0),
    };
  };
  return {
    ...{ baseline: asIs[0]!.plan, seed, years, samples: kept.length, impossible },
    step_minutes: runs.step / 60,
    inputs: inputs.map(({ path, source, in: ranges }) => {
      const { value, low, high } = ranges.find((range) => range !== null)!;
      return { path, value, low, high, source };
    }),
    left_aside: leftAside.map(({ path }) => path),
    plans: asIs.map(({ plan }, p) => ({
      plan,
      money: planOf('money', p),
      damp: planOf('damp', p),
      cold: planOf('cold', p),
    })),
    differences: plans.slice(1).map((_, k) => ({
      plan: asIs[k + 1]!.plan,
      money: beatOf('money', k + 1),
      damp: beatOf('damp', k + 1),
      cold: beatOf('cold', k + 1),
    })),
  };
}

const FIGURES: Readonly<Record<Figure, (plan: PlanMeasures) => number>> = {
  money: ({ money }) => money.total_per_year,
  damp: coldSpotHours,
  cold: (plan) => planFigures(plan).cold.value,
};
