import { coldSpotHours, roomHours } from '../../measures/comfort/room-hours.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { settingWords } from '../../scenario/yaml/settings.ts';
import { InputProblems } from '../../units/problem.ts';
import { extraPerYear } from '../compare/other-prices.ts';
import { latinHypercube } from '../latin-hypercube.ts';
import type { PlanVariant } from '../plan-variant.ts';
import { breakEven } from './break-even.ts';
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

interface DoubtFlip {
  readonly path: string;
  /** What it is taken to be, and at which value both cost the same. */
  readonly today: number;
  readonly value: number;
}

export interface SampledDoubtSetup {
  /** The baseline first. */
  readonly plans: readonly PlanVariant[];
  readonly inputs: readonly SampledInput[];
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
 * @throws RangeError where no sample is a home
 */
export async function sampledDoubt(setup: SampledDoubtSetup): Promise<SampledDoubt> {
  const { plans, inputs, samples, seed, years, run } = setup;
  const asked = latinHypercube(samples, inputs.length + 1, seed).map(async (shares) => {
    const year = Math.floor(shares.at(-1)! * years);
    const all = plans.map(async (plan, p) => run(withShares(plan, p, inputs, shares), year));
    // All are waited for, so that a failure of one leaves no other behind.
    const done = await Promise.allSettled(all);
    const failed = done.find((one) => one.status === 'rejected');
    if (failed !== undefined && !(failed.reason instanceof InputProblems)) throw failed.reason;
    return failed === undefined ? { shares, year, runs: await Promise.all(all) } : null;
  });
  const asIs = await Promise.all(plans.map(async (plan) => run(plan, 0)));
  const kept = (await Promise.all(asked)).filter((sample) => sample !== null);
  if (kept.length === 0) throw new RangeError('sampledDoubt: no sample is a home that can be run');
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
    const flips = await flipsOf(setup, k + 1, money);
    return { plan: asIs[k + 1]!.plan, money, damp, cold, flips };
  });
  return {
    ...{ baseline: asIs[0]!.plan, seed, years },
    ...{ samples: kept.length, impossible: samples - kept.length },
    inputs: inputs.map(({ path, source, in: ranges }) => {
      const { value, low, high } = ranges.find((range) => range !== null)!;
      return { path, value, low, high, source };
    }),
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

/**
 * Of the inputs that move the difference in money most, those whose value alone, all else as it is,
 * turns round which plan costs less. Asked only where the samples do not all say the same.
 */
async function flipsOf(
  { plans, inputs, run }: SampledDoubtSetup,
  p: number,
  money: BeatDoubt,
): Promise<DoubtFlip[]> {
  if (money.less + money.equal >= 1 || money.less === 0) return [];
  const strongest = money.matters
    .flatMap(({ path }) => inputs.filter((input) => input.path === path))
    .slice(0, MOST_FLIPS);
  const found = strongest.map(async (input): Promise<DoubtFlip[]> => {
    const range = input.in[p] ?? input.in[0]!;
    if (range === null) return [];
    const words = (value: number) => [settingWords(input.path, String(value))];
    const at = (value: number, plan: number) => {
      const own = plans[plan]!;
      const there = input.in[plan] !== null;
      return run(there ? { ...own, set: [...own.set, ...words(value)] } : own, 0);
    };
    const decision = async (value: number) => extraPerYear(await at(value, 0), await at(value, p));
    const reach = { low: range.low, high: range.high, resolution: (range.high - range.low) / 50 };
    const today = Math.min(Math.max(range.value, range.low), range.high);
    try {
      const { value } = await breakEven({ ...reach, today, decision, mostRuns: 7 });
      return value === null ? [] : [{ path: input.path, today, value }];
    } catch (error) {
      if (!(error instanceof InputProblems)) throw error;
      return []; // an end of the range is no home by itself
    }
  });
  return (await Promise.all(found)).flat();
}

const FIGURES: Readonly<Record<Figure, (plan: PlanMeasures) => number>> = {
  money: ({ money }) => money.total_per_year,
  damp: coldSpotHours,
  cold: (plan) => roomHours(plan, 'outside_band_occupied_hours', 'temperature_low'),
};

const MOST_FLIPS = 3;
