import { coldSpotHours, roomHours } from '../../measures/comfort/room-hours.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { settingWords } from '../../scenario/yaml/settings.ts';
import { InputProblems } from '../../units/problem.ts';
import { latinHypercube } from '../latin-hypercube.ts';
import type { PlanVariant } from '../plan-variant.ts';
import { type DoubtFlip, doubtFlips } from './doubt-flips.ts';
import { type FigureDoubt, figureDoubt } from './figure-doubt.ts';
import { atShare, type SampledInput } from './sampled-inputs.ts';

/** What is not known exactly, tried all at once, and what it does to the figures of plans. */
export interface SampledDoubt {
  readonly baseline: string;
  readonly seed: number;
  /** Samples whose figures count. */
  readonly samples: number;
  /** Samples left out, because in one of the plans their values are no home together. */
  readonly impossible: number;
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

type Figure = 'money' | 'damp' | 'cold';

/**
 * Figures of one plan: money a year; damp as hours of cold spots above 80 % relative humidity, and
 * cold as hours below the temperature band with somebody in, both added up over the rooms.
 */
export interface PlanDoubt extends Readonly<Record<Figure, FigureDoubt>> {
  readonly plan: string;
}

/** A plan minus the baseline, sample by sample. */
export interface DifferenceDoubt extends Readonly<Record<Figure, BeatDoubt>> {
  readonly plan: string;
  /** Single inputs whose value turns round which of the two costs less. */
  readonly flips: readonly DoubtFlip[];
}

export interface BeatDoubt extends FigureDoubt {
  /** Share of the samples in which the plan has less than the baseline, and as much. */
  readonly less: number;
  readonly equal: number;
}

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
  readonly run: (variant: PlanVariant, year: number) => PlanMeasures | Promise<PlanMeasures>;
}

/**
 * Draws all doubtful inputs at once, as a Latin hypercube, and runs every plan with each draw, so
 * that what is common to plans cancels in their difference. Each input goes evenly from its low to
 * the value it is taken to be in half of the samples, and on to its high in the other half.
 *
 * @throws InputProblems as the first sample does, where none is a home
 */
export async function sampledDoubt(setup: SampledDoubtSetup): Promise<SampledDoubt> {
  const { plans, inputs, leftAside = [], samples, seed, years, run } = setup;
  const asked = latinHypercube(samples, inputs.length + 1, seed).map(async (shares) => {
    const year = Math.floor(shares.at(-1)! * years);
    const all = plans.map(async (plan, p) => run(withShares(plan, p, inputs, shares), year));
    // All are waited for, so that a failure of one leaves no other behind.
    const done = await Promise.allSettled(all);
    const failed = done.find((one) => one.status === 'rejected');
    if (failed !== undefined && !(failed.reason instanceof InputProblems)) throw failed.reason;
    if (failed !== undefined) return failed.reason as InputProblems;
    return { shares, year, runs: await Promise.all(all) };
  });
  const asIs = await Promise.all(plans.map(async (plan) => run(plan, 0)));
  const drawn = await Promise.all(asked);
  const kept = drawn.flatMap((sample) => (sample instanceof InputProblems ? [] : [sample]));
  if (kept.length === 0) throw drawn[0];
  const doubtOf = (figure: (runs: readonly PlanMeasures[]) => number): FigureDoubt =>
    figureDoubt({
      asIs: figure(asIs),
      figures: kept.map(({ runs }) => figure(runs)),
      inputs: inputs.map(({ path }, d) => ({ path, shares: kept.map(({ shares }) => shares[d]!) })),
      years: years > 1 ? kept.map(({ year }) => year) : [],
    });
  const beatOf = (figure: Figure, p: number): BeatDoubt => {
    const differences = kept.map(
      ({ runs }) => FIGURES[figure](runs[p]!) - FIGURES[figure](runs[0]!),
    );
    const share = (holds: (difference: number) => boolean) =>
      differences.filter(holds).length / kept.length;
    return {
      ...doubtOf((runs) => FIGURES[figure](runs[p]!) - FIGURES[figure](runs[0]!)),
      less: share((difference) => difference < 0),
      equal: share((difference) => difference === 0),
    };
  };
  const differences = plans.slice(1).map(async (_, k): Promise<DifferenceDoubt> => {
    const money = beatOf('money', k + 1);
    const [damp, cold] = [beatOf('damp', k + 1), beatOf('cold', k + 1)];
    const flips = await doubtFlips(setup, k + 1, money);
    return { plan: asIs[k + 1]!.plan, money, damp, cold, flips };
  });
  return {
    ...{ baseline: asIs[0]!.plan, seed, years },
    ...{ samples: kept.length, impossible: samples - kept.length },
    inputs: inputs.map(({ path, source, in: ranges }) => {
      const { value, low, high } = ranges.find((range) => range !== null)!;
      return { path, value, low, high, source };
    }),
    left_aside: leftAside.map(({ path }) => path),
    plans: asIs.map(({ plan }, p) => ({
      plan,
      money: doubtOf((runs) => FIGURES.money(runs[p]!)),
      damp: doubtOf((runs) => FIGURES.damp(runs[p]!)),
      cold: doubtOf((runs) => FIGURES.cold(runs[p]!)),
    })),
    differences: await Promise.all(differences),
  };
}

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
  return { ...plan, set: [...plan.set, ...set] };
}

const FIGURES: Readonly<Record<Figure, (plan: PlanMeasures) => number>> = {
  money: ({ money }) => money.total_per_year,
  damp: coldSpotHours,
  cold: (plan) => roomHours(plan, 'outside_band_occupied_hours', 'temperature_low'),
};
