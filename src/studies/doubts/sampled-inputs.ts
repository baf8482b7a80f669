import { couldStand } from '../../scenario/edits/scenario-facts.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { Scenario } from '../../scenario/read-scenario.ts';
import { settingWords } from '../../scenario/yaml/settings.ts';
import { InputProblems } from '../../units/problem.ts';
import { alike } from './alike.ts';
import { doubtfulInputs } from './doubtful-inputs.ts';
import { statedDoubts } from './stated-doubts.ts';

/** A doubtful number that is sampled in several plans at once. */
export interface SampledInput {
  /** RFC 6901 pointer. */
  readonly path: string;
  readonly source: string;
  /** As each plan has it, in the order of the plans; null where a plan has no such number. */
  readonly in: readonly (InputRange | null)[];
}

/** What a number is taken to be, and how low and high it may be. */
export interface InputRange {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Whether only whole numbers can stand there. */
  readonly whole: boolean;
}

/** A plan, and the scenario as plain values with its changes laid on. */
export interface DoubtedPlan {
  readonly prepared: PreparedPlan;
  readonly raw: unknown;
}

/**
 * Every number of some plans that is stated as doubtful or was assumed with a low and a high, and
 * that can move heat, water or money: stated ones first, then in the order of `doubtfulInputs`.
 *
 * @param air  whether the answer is about what the air carries too
 */
export function sampledInputs(
  scenario: Scenario,
  plans: readonly DoubtedPlan[],
  air = false,
): SampledInput[] {
  const found = plans.map(({ prepared, raw }) => {
    const stated = statedDoubts(scenario, prepared, raw).inputs;
    const { assumed: all } = prepared;
    const assumed = doubtfulInputs(all, all, Number.POSITIVE_INFINITY, air);
    const paths = new Set(stated.map(({ path }) => path));
    return [...stated, ...assumed.filter(({ path }) => !paths.has(path))];
  });
  const named = [...scenario.doubts, ...scenario.fitted].map(({ path }) => path);
  const stated = found.flat().filter(({ path }) => named.includes(path));
  const all = [...stated, ...found.flat()];
  return [...new Map(all.toReversed().map((input) => [input.path, input])).values()]
    .toReversed()
    .map(({ path, source }) => {
      // What can stand at a place is the same in all plans.
      let canBeBroken: boolean | null = null;
      const isWhole = (raw: unknown, [value, low, high]: readonly [number, number, number]) => {
        if (![value, low, high].every(Number.isInteger)) return false;
        canBeBroken ??= couldStand(raw, path, (low + high) / 2 + 0.3);
        return !canBeBroken;
      };
      const rangeIn = (inputs: (typeof found)[number], p: number): InputRange | null => {
        const input = inputs.find((one) => one.path === path);
        if (input === undefined) return null;
        const { value, low, high } = input;
        return { value, low, high, whole: isWhole(plans[p]!.raw, [value, low, high]) };
      };
      return { path, source, in: found.map(rangeIn) };
    });
}

/**
 * The number at a share of its doubt: half of all shares lie below the value it is taken to be, evenly
 * down to its low, and half above, evenly up to its high.
 *
 * @param share  from 0 to 1
 */
export function atShare({ value, low, high, whole }: InputRange, share: number): number {
  const middle = Math.min(Math.max(value, low), high);
  const found =
    share < 0.5 ? low + 2 * share * (middle - low) : middle + (2 * share - 1) * (high - middle);
  return whole ? Math.round(found) : Number(found.toPrecision(12));
}

/** Inputs to draw, and those that are left aside. */
interface SortedInputs {
  readonly drawn: readonly SampledInput[];
  readonly leftAside: readonly SampledInput[];
}

/**
 * Set aside inputs that change more than themselves: with the very value that is taken for them laid
 * on, the home is another one. The U-value of a floor that is worked out from its layers, once given,
 * does away with the layers.
 *
 * Few do, so many are laid on at once, and fewer where the home is another one then.
 *
 * @param plans  as `sampledInputs` had them
 * @param prepare  a plan, by its number, with numbers laid on, as words of the command line
 */
export function setAside(
  inputs: readonly SampledInput[],
  plans: readonly DoubtedPlan[],
  prepare: (plan: number, set: readonly string[]) => PreparedPlan,
): SortedInputs {
  const change = (plan: number, some: readonly SampledInput[]): boolean => {
    const set = some.map(({ path, in: ranges }) => settingWords(path, String(ranges[plan]!.value)));
    try {
      return !alike(homeOf(prepare(plan, set)), homeOf(plans[plan]!.prepared));
    } catch (error) {
      if (error instanceof InputProblems) return true;
      throw error;
    }
  };
  const changing = (plan: number, some: readonly SampledInput[]): readonly SampledInput[] => {
    if (some.length === 0 || !change(plan, some)) return [];
    if (some.length === 1) return some;
    const half = some.length >> 1;
    return [...changing(plan, some.slice(0, half)), ...changing(plan, some.slice(half))];
  };
  const aside = new Set(
    plans.flatMap((_, plan) =>
      changing(
        plan,
        inputs.filter((one) => firstPlanOf(one) === plan),
      ),
    ),
  );
  return {
    drawn: inputs.filter((input) => !aside.has(input)),
    leftAside: inputs.filter((input) => aside.has(input)),
  };
}

/** Number of the first plan that has such a number. */
const firstPlanOf = ({ in: ranges }: SampledInput): number =>
  ranges.findIndex((range) => range !== null);

/** Without what only tells where values come from. */
const homeOf = ({ assumed: _a, cautions: _c, ...home }: PreparedPlan) => home;
