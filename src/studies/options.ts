import type { PlanMeasures } from '../measures/plan-measures.ts';
import type { PreparedPlan } from '../scenario/prepared.ts';
import type { Scenario } from '../scenario/read-scenario.ts';
import {
  type PlanVariant,
  prepareVariant,
  type RunVariant,
  variantScenario,
  withEdit,
} from './plan-variant.ts';
import type { AssumedPurchase, BuiltIn } from './proposals/built-in.ts';
import { builtInAlternatives } from './proposals/built-in-alternatives.ts';

/** One of the things that could be done, with what comes of it. */
export interface Option {
  readonly name: string;
  /** What it is, in one sentence. */
  readonly description: string;
  readonly origin: 'baseline' | 'plan' | 'proposed' | 'as safe';
  readonly variant: PlanVariant;
  /** The scenario as it has it, as plain values. */
  readonly raw: unknown;
  readonly prepared: PreparedPlan;
  readonly measures: PlanMeasures;
  /** Purchases for it whose prices were assumed. */
  readonly assumedPurchases: readonly AssumedPurchase[];
}

export interface OptionsSetup {
  readonly scenario: Scenario;
  /** Texts of `Scenario.files`. */
  readonly files: ReadonlyMap<string, string>;
  /** Names of plans, the baseline first. */
  readonly plans: readonly string[];
  /** `/pointer=value` words laid on all of them. */
  readonly set: readonly string[];
  readonly run: RunVariant;
}

/**
 * All that could be done: the plans asked for, the baseline first, and what the program proposes by
 * itself beside them.
 *
 * @throws InputProblems as `preparePlan`
 */
export async function allOptions(setup: OptionsSetup): Promise<Option[]> {
  const written = await writtenOptions(setup);
  const [baseline] = written;
  if (baseline === undefined) throw new RangeError('allOptions: needs at least one plan');
  const proposed = proposalsFor(setup, baseline.name, baseline.measures).map(
    ({ name, description, change, purchases }) =>
      ranOption(
        setup,
        {
          ...withEdit(baseline.variant, change),
          as: { name, description, purchases },
        },
        'proposed',
        purchases,
      ),
  );
  return [...written, ...(await Promise.all(proposed))];
}

/**
 * What the program proposes by itself beside a scenario's plans; nothing of it is run.
 *
 * @param baseline  name of a plan, and its figures
 */
export function proposalsFor(
  { scenario, set }: Pick<OptionsSetup, 'scenario' | 'set'>,
  baseline: string,
  measures: PlanMeasures,
): BuiltIn[] {
  const rawOf = (plan: string): unknown => variantScenario(scenario, { plan, set });
  const plans = scenario.plans.map(({ name }) => ({ name, raw: rawOf(name) }));
  return builtInAlternatives({ raw: rawOf(baseline), plans }, measures);
}

/**
 * The plans asked for, the baseline first.
 *
 * @throws InputProblems as `preparePlan`
 */
export const writtenOptions = (setup: OptionsSetup): Promise<Option[]> =>
  Promise.all(
    setup.plans.map((plan, k) =>
      ranOption(setup, { plan, set: setup.set }, k === 0 ? 'baseline' : 'plan'),
    ),
  );

async function ranOption(
  { scenario, files, run }: OptionsSetup,
  variant: PlanVariant,
  origin: Option['origin'],
  assumedBuys: readonly AssumedPurchase[] = [],
): Promise<Option> {
  const prepared = prepareVariant(scenario, files, variant);
  return {
    ...{
      name: prepared.plan,
      description: prepared.description,
      origin,
      variant,
      prepared,
      assumedPurchases: assumedBuys,
    },
    raw: variantScenario(scenario, variant),
    measures: await run(variant),
  };
}
