import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { shortStretch } from '../../scenario/edits/short-stretch.ts';
import { settingWords } from '../../scenario/yaml/settings.ts';
import { settingsFromPatch } from '../../scenario/yaml/settings-from-patch.ts';
import { InputProblems } from '../../units/problem.ts';
import { extraPerYear } from '../compare/other-prices.ts';
import { effectsOf } from '../effects/plan-effects.ts';
import { planFigures } from '../effects/plan-figures.ts';
import type { Option } from '../options.ts';
import type { PlanVariant, RunVariant } from '../plan-variant.ts';
import type { DoubtfulInput } from './doubtful-inputs.ts';

export interface DoubtsByEffectSetup {
  readonly baseline: Option;
  readonly plan: Option;
  readonly inputs: readonly DoubtfulInput[];
  /** When what is asked about matters most. */
  readonly season: 'cold' | 'hot';
  readonly run: RunVariant;
}

/**
 * Doubtful inputs by how much each moves the answer, most first: every one is tried low and high in
 * three weeks of the season, which costs a twentieth of a year. What counts is the farther of both
 * ends, in money and in what people notice, of the baseline and of the plan.
 *
 * @returns null where such weeks cannot be run, as where the scenario has a short period of its own
 */
export async function doubtsByEffect(setup: DoubtsByEffectSetup): Promise<DoubtfulInput[] | null> {
  const { baseline, plan, inputs, season } = setup;
  const weeks = [baseline, plan].map(({ raw }) => shortStretch(raw, season));
  if (weeks.includes(null)) return null;
  const quick = ({ variant }: Option, k: number): PlanVariant => ({
    ...variant,
    set: [...variant.set, ...settingsFromPatch(weeks[k])],
  });
  const variants = [baseline, plan].map(quick);
  const asIs = await bothRuns(setup, variants, null, '');
  if (asIs === null) return null;
  const found = await Promise.all(
    inputs.map(async (input) => {
      const ends = [input.low, input.high].map(async (value) => {
        const words = settingWords(input.path, String(value));
        const there = await bothRuns(setup, variants, input, words);
        return there === null ? 0 : movedBy(asIs, there);
      });
      return { input, moved: Math.max(...(await Promise.all(ends))) };
    }),
  );
  return found.sort((a, b) => b.moved - a.moved).map(({ input }) => input);
}

/** Figures of baseline and plan; null where they are no home. */
async function bothRuns(
  { run }: DoubtsByEffectSetup,
  variants: readonly PlanVariant[],
  input: DoubtfulInput | null,
  words: string,
): Promise<readonly PlanMeasures[] | null> {
  const all = variants.map(async (variant, k) => {
    const other = k === 0 ? 'plan' : 'baseline';
    const stays = input === null || input.only === other;
    return run(stays ? variant : { ...variant, set: [...variant.set, words] });
  });
  for (const one of await Promise.allSettled(all)) {
    if (one.status === 'fulfilled') continue;
    if (one.reason instanceof InputProblems) return null;
    throw one.reason;
  }
  return Promise.all(all);
}

/** How far two pairs of runs are apart: hundredths of the bill, and weights of what people notice. */
function movedBy(asIs: readonly PlanMeasures[], there: readonly PlanMeasures[]): number {
  const extra = extraPerYear(there[0]!, there[1]!) - extraPerYear(asIs[0]!, asIs[1]!);
  const felt = asIs.map((measures, k) =>
    effectsOf(planFigures(measures), planFigures(there[k]!)).reduce((sum, e) => sum + e.weight, 0),
  );
  return (100 * Math.abs(extra)) / asIs[0]!.money.total_per_year + Math.max(...felt);
}
