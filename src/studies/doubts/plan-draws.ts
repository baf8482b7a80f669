import { quantile } from 'simple-statistics';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { Scenario } from '../../scenario/read-scenario.ts';
import { type Judged, judged } from '../effects/plan-figures.ts';
import type { Option } from '../options.ts';
import { type PlanVariant, prepareVariant, withSettings } from '../plan-variant.ts';
import { ifPossible } from '../run-failures.ts';
import { drawnDifferences } from './drawn-figures.ts';
import { rankCorrelation } from './figure-doubt.ts';
import { type DrawnDoubt, doubtOfRuns } from './sampled-doubt.ts';
import { type SampledInput, sampledInputs, setAside } from './sampled-inputs.ts';
import { type SampledRuns, sampledRuns } from './sampled-runs.ts';
import { STATED } from './stated-doubts.ts';

/** What draws of all doubtful inputs at once do to a plan and its baseline. */
export interface PlanDraws {
  readonly doubt: DrawnDoubt;
  /** The plan minus the baseline. */
  readonly difference: DrawnDoubt['differences'][number];
  /** Baseline and plan, draw by draw: in their own time step where they were run in it, else in that of the draws. */
  readonly pairs: readonly (readonly [Judged, Judged])[];
  /** All that was drawn, what moves the difference between the two most first. */
  readonly ranked: readonly RankedInput[];
  /** How far the plan changes any figure, draw by draw, and in short. */
  readonly changesOf: (figure: FigureOfPlan) => readonly number[];
  readonly changeOf: (figure: FigureOfPlan) => Spread;
}

type FigureOfPlan = (plan: Judged) => number;

interface RankedInput {
  /** RFC 6901 pointer. */
  readonly path: string;
  /** Spearman's rank correlation with the extra money. */
  readonly correlation: number;
}

/** A figure without the lowest and highest tenth of its draws. */
export interface Spread {
  readonly p10: number;
  readonly median: number;
  readonly p90: number;
}

/** How often and from what seed inputs are drawn, in how many years of weather. */
export interface DrawChoice {
  readonly samples: number;
  readonly seed: number;
  readonly years: number;
}

export interface PlanDrawsSetup extends DrawChoice {
  readonly scenario: Scenario;
  /** Texts of `Scenario.files`. */
  readonly files: ReadonlyMap<string, string>;
  readonly baseline: Option;
  readonly plan: Option;
  /** Whether what the air carries is asked about too. */
  readonly air: boolean;
  readonly run: (variant: PlanVariant, year: number) => PlanMeasures | Promise<PlanMeasures>;
}

/** Runs a plan and its baseline with every draw; null where nothing is in doubt or no draw is a home. */
export async function planDraws(setup: PlanDrawsSetup): Promise<PlanDraws | null> {
  const { scenario, files, baseline, plan, air, samples, seed, years, run } = setup;
  if (samples === 0) return null;
  const both = [baseline, plan];
  const { drawn: inputs, leftAside } = setAside(
    sampledInputs(scenario, both, air),
    both,
    (k, set) => {
      const { variant } = both[k]!;
      return prepareVariant(scenario, files, withSettings(variant, set));
    },
  );
  if (inputs.length === 0) return null;
  const plans = both.map(({ variant }) => variant);
  const { dt: step } = baseline.prepared;
  const asked = { plans, inputs, leftAside, samples, seed, years, step, run };
  const runs = await ifPossible(() => sampledRuns(asked));
  return runs === null ? null : drawsOf(doubtOfRuns(asked, runs), runs, inputs);
}

function drawsOf(doubt: DrawnDoubt, runs: SampledRuns, inputs: readonly SampledInput[]): PlanDraws {
  const both = ([before, after]: readonly PlanMeasures[]) =>
    [judged(before!), judged(after!)] as const;
  const kept = runs.kept.map((draw) => ({
    runs: both(draw.runs),
    own: draw.own === null ? null : both(draw.own),
  }));
  const changesOf = (figure: FigureOfPlan) => drawnDifferences(kept, 1, figure);
  const [difference] = doubt.differences as [DrawnDoubt['differences'][number]];
  const extra = changesOf(bill);
  const follows = inputs.map(({ path, source }, d) => {
    const shares = runs.kept.map((draw) => draw.shares[d]!);
    return { path, source, correlation: rankCorrelation(shares, extra) };
  });
  return {
    ...{ doubt, difference, changesOf },
    pairs: kept.map((draw) => draw.own ?? draw.runs),
    ranked: byStrength(follows, difference),
    changeOf: (figure) => spread(changesOf(figure)),
  };
}

/**
 * What money, damp or cold follow more than chance comes first, the closest before others; then what
 * the scenario itself doubts, then the rest by how closely money follows it.
 */
function byStrength(
  follows: readonly (RankedInput & { readonly source: string })[],
  { money, damp, cold }: PlanDraws['difference'],
): RankedInput[] {
  const beyondChance = [...money.matters, ...damp.matters, ...cold.matters];
  const sorted = follows.map(({ path, source, correlation }) => {
    const closest = beyondChance
      .filter((one) => one.path === path)
      .map((one) => Math.abs(one.correlation));
    return { path, correlation, stated: source === STATED, most: Math.max(0, ...closest) };
  });
  return sorted
    .sort(
      (a, b) =>
        b.most - a.most ||
        Number(b.stated) - Number(a.stated) ||
        Math.abs(b.correlation) - Math.abs(a.correlation),
    )
    .map(({ path, correlation }) => ({ path, correlation }));
}

const bill = ({ measures }: Judged): number => measures.money.total_per_year;

function spread(values: readonly number[]): Spread {
  const [p10, median, p90] = quantile([...values], [0.1, 0.5, 0.9]) as [number, number, number];
  return { p10, median, p90 };
}
