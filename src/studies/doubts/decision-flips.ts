import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { InputProblems } from '../../units/problem.ts';
import { extraPerYear } from '../compare/plan-money.ts';
import { allOf, ifPossible } from '../run-failures.ts';
import {
  asksTheSame,
  type Verdict,
  type Weighing,
  type WeighSetup,
} from '../verdict/weigh-plan.ts';
import { breakEven } from './break-even.ts';
import type { Flip } from './flip.ts';
import { type FlipInput, type FlipInputSetup, flipInputs } from './flip-inputs.ts';

export interface FlipsSetup extends FlipInputSetup {
  /** Extra money a year in the middle of the draws; kept as wide at other values. */
  readonly range: { readonly low: number; readonly high: number };
  /** Weighs figures as the decision does. */
  readonly weigh: (
    figures: Pick<WeighSetup, 'baseline' | 'plan' | 'rivals' | 'range'>,
  ) => Pick<Weighing, 'verdict' | 'standing'>;
}

/**
 * Where the decision would turn round: prices of fuels, water the household gives off, the
 * thermostats, price of what is bought. Baseline, plan and rivals are run again at every value and
 * weighed again; only prices, which no room feels, are put into the figures of the runs there are.
 */
export const decisionFlips = async (setup: FlipsSetup): Promise<Flip[]> =>
  Promise.all(flipInputs(setup).map((input) => flipOf(setup, input)));

/** Where one input turns the decision. @param most  how often it is run at most, 3 at least */
export async function flipOf(setup: FlipsSetup, input: FlipInput, most = 7): Promise<Flip> {
  const { path, input: name, unit, today, low, high, relative, note } = input;
  const found = { path, input: name, unit, today, low, high, relative };
  const tried: { at: number; verdict: Verdict }[] = [];
  const now = weighedAt(setup, baselineAndAll(setup));
  const decide = async (value: number): Promise<number> => {
    const { verdict, standing } =
      value === today ? now : weighedAt(setup, await figuresAt(setup, input, value));
    tried.push({ at: value, verdict });
    const distance = Math.max(Math.abs(standing), Number.EPSILON);
    return asksTheSame(verdict, now.verdict) ? distance : -distance;
  };
  const { resolution, usual } = input;
  try {
    const lowest = await reachable(decide, today, low);
    const highest = await reachable(decide, today, high);
    if (lowest === highest) await decide(high); // which says why there is no home but today's
    const reach = { today, decision: decide, resolution, low: lowest, high: highest };
    const { value } = await breakEven({ ...reach, mostRuns: input.priced ? MOST_PRICED : most });
    const likely = value !== null && value >= usual[0] && value <= usual[1];
    const becomes = value === null ? null : beyond(tried, value, now.verdict);
    return { ...found, low: lowest, high: highest, value, becomes, likely, tried: true, note };
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    const why = `not tried: ${whyNot(error)}`;
    return { ...found, value: null, becomes: null, likely: false, tried: false, note: why };
  }
}

/** Halvings that need no run, enough for a thousandth of any range. */
const MOST_PRICED = 30;

/** What was found nearest to where it turns, of what asks for something else than now. */
function beyond(
  tried: readonly { readonly at: number; readonly verdict: Verdict }[],
  value: number,
  now: Verdict,
): Verdict | null {
  const other = tried.filter(({ verdict }) => !asksTheSame(verdict, now));
  const [nearest] = other.sort((a, b) => Math.abs(a.at - value) - Math.abs(b.at - value));
  return nearest?.verdict ?? null;
}

const baselineAndAll = ({ baseline, plan, rivals }: FlipsSetup): PlanMeasures[] =>
  [baseline, plan, ...rivals].map(({ measures }) => measures);

const figuresAt = (
  { baseline, plan, rivals }: FlipsSetup,
  input: FlipInput,
  value: number,
): Promise<PlanMeasures[]> =>
  allOf([baseline, plan, ...rivals].map(async (option) => input.at(option, value)));

function weighedAt(
  setup: FlipsSetup,
  [baseline, plan, ...rivals]: readonly PlanMeasures[],
): Pick<Weighing, 'verdict' | 'standing'> {
  const { low, high } = setup.range;
  const below = extraPerYear(setup.baseline.measures, setup.plan.measures) - low;
  const moved = extraPerYear(baseline!, plan!);
  const range = { low: moved - below, high: moved - below + (high - low) };
  return setup.weigh({ baseline: baseline!, plan: plan!, rivals, range });
}

/** The first problem in words; one of no place in the scenario is what comes of the home itself. */
function whyNot({ problems: [problem] }: InputProblems): string {
  const { where = '', got = '' } = problem ?? {};
  return where === '' ? `it would lead to ${got}` : `${where} would be ${got}`;
}

/** An end of a range, or the first on halving the way to today at which there is a home to run. */
async function reachable(
  decide: (value: number) => Promise<number>,
  today: number,
  end: number,
): Promise<number> {
  for (let k = 0; k < 3; k++) {
    const tried = today + (end - today) / 2 ** k;
    if ((await ifPossible(() => decide(tried))) !== null) return tried;
  }
  return today;
}
