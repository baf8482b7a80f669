import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { settingWords } from '../../scenario/yaml/settings.ts';
import { extraPerYear } from '../compare/plan-money.ts';
import { type PlanVariant, type RunVariant, withSettings } from '../plan-variant.ts';
import { allOf, ifPossible } from '../run-failures.ts';
import type { DoubtfulInput } from './doubtful-inputs.ts';

/** What one input, low and high, does to a decision. */
interface InputEffect extends DoubtfulInput {
  /** The decision's figure with the input low and high, all else as it is. */
  readonly at_low: number;
  readonly at_high: number;
  /** The farther of the two from the figure as it is; never below 0. */
  readonly effect: number;
  /** True where one of the two has another sign than the figure as it is. */
  readonly flips: boolean;
}

export interface OneAtATime {
  /** The decision's figure with every input as it is. */
  readonly figure: number;
  /** Least figure of all that was tried. */
  readonly low: number;
  /** Greatest figure of all that was tried. */
  readonly high: number;
  /** Effects of all inputs tried, largest first. */
  readonly effects: readonly InputEffect[];
  /** Inputs at whose low or high the scenario is no longer one, such as a pane larger than its wall. */
  readonly impossible: readonly DoubtfulInput[];
  readonly runs: number;
}

export interface OneAtATimeSetup {
  readonly baseline: PlanVariant;
  readonly plan: PlanVariant;
  readonly inputs: readonly DoubtfulInput[];
  readonly run: RunVariant;
  /** The decision's figure; extra money a year where not given. */
  readonly figure?: (baseline: PlanMeasures, plan: PlanMeasures) => number;
}

/**
 * Each input low and high in turn, in the baseline and in the plan alike, so that what is common to
 * both cancels; an input that stands in one of them only is changed there. All runs are asked for
 * at once, and the same one more than once where only one plan changes.
 */
export async function oneAtATime(setup: OneAtATimeSetup): Promise<OneAtATime> {
  const { baseline, plan, inputs, run, figure = extraPerYear } = setup;
  const decide = async (words?: string, only?: DoubtfulInput['only']): Promise<number | null> => {
    const laidOn = (one: PlanVariant, name: 'baseline' | 'plan'): PlanVariant =>
      words === undefined || (only !== undefined && only !== name)
        ? one
        : withSettings(one, [words]);
    const both = [laidOn(baseline, 'baseline'), laidOn(plan, 'plan')];
    const found = await ifPossible(() => allOf(both.map(async (one) => run(one))));
    return found === null ? null : figure(found[0]!, found[1]!);
  };
  const asked = inputs.map(async (input) => {
    const at = (value: number) => decide(settingWords(input.path, String(value)), input.only);
    return { input, found: await Promise.all([at(input.low), at(input.high)]) };
  });
  const [asIs, ...tried] = await Promise.all([decide(), ...asked]);
  if (asIs === null) throw new RangeError('oneAtATime: the scenario as it is cannot be run');

  const effects: InputEffect[] = [];
  const impossible: DoubtfulInput[] = [];
  for (const { input, found } of tried) {
    const [atLow, atHigh] = found as [number | null, number | null];
    if (atLow === null || atHigh === null) impossible.push(input);
    else effects.push(effectOf(input, asIs, atLow, atHigh));
  }
  const all = [asIs, ...effects.flatMap(({ at_low, at_high }) => [at_low, at_high])];
  return {
    figure: asIs,
    low: Math.min(...all),
    high: Math.max(...all),
    effects: effects.sort((a, b) => b.effect - a.effect || (a.path < b.path ? -1 : 1)),
    impossible,
    runs: 2 + 4 * inputs.length,
  };
}

function effectOf(input: DoubtfulInput, asIs: number, atLow: number, atHigh: number): InputEffect {
  const ends = [atLow, atHigh];
  return {
    ...input,
    at_low: atLow,
    at_high: atHigh,
    effect: Math.max(...ends.map((end) => Math.abs(end - asIs))),
    flips: ends.some((end) => Math.sign(end) !== Math.sign(asIs)),
  };
}
