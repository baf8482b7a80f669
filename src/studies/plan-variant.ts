import type { Purchase } from '../measures/energy/purchase-cost-per-year.ts';
import type { PlanMeasures } from '../measures/plan-measures.ts';
import { mergedFor, planChain } from '../scenario/plan-chain.ts';
import { preparePlan } from '../scenario/prepare-plan.ts';
import type { PreparedPlan } from '../scenario/prepared.ts';
import type { Scenario } from '../scenario/read-scenario.ts';
import { readSettings, withSetting } from '../scenario/yaml/settings.ts';
import { settingsFromPatch } from '../scenario/yaml/settings-from-patch.ts';

/** A plan of a scenario with settings laid on it. Plain data, small enough to be sent to a worker. */
export interface PlanVariant {
  /** Name of a plan of the scenario. */
  readonly plan: string;
  /** `/pointer=value` words, laid on last and in their order. */
  readonly set: readonly string[];
  /** What it is called and bought for it besides, where it is a plan of its own. */
  readonly as?: {
    readonly name: string;
    readonly description: string;
    readonly purchases: readonly Purchase[];
  };
}

/** A varied plan with more settings laid on. @param words  `/pointer=value` */
export const withSettings = (variant: PlanVariant, words: readonly string[]): PlanVariant => ({
  ...variant,
  set: [...variant.set, ...words],
});

/** A varied plan with a change laid on. @param edit  a merge patch */
export const withEdit = (variant: PlanVariant, edit: unknown): PlanVariant =>
  withSettings(variant, settingsFromPatch(edit));

/** Runs a varied plan; several may be asked for before the first has answered. */
export type RunVariant = (variant: PlanVariant) => PlanMeasures | Promise<PlanMeasures>;

/**
 * Prepare a varied plan: checked as any typed scenario is.
 *
 * @throws InputProblems as preparePlan
 */
export function prepareVariant(
  scenario: Scenario,
  files: ReadonlyMap<string, string>,
  { plan, set, as }: PlanVariant,
): PreparedPlan {
  const prepared = preparePlan(scenario, { plan, set, files });
  if (as === undefined) return prepared;
  return {
    ...prepared,
    plan: as.name,
    description: as.description,
    purchases: [...prepared.purchases, ...as.purchases],
  };
}

/** The scenario as a varied plan has it, as plain values, before anything is filled in. */
export function variantScenario(scenario: Scenario, { plan, set }: PlanVariant): unknown {
  const chain = planChain(scenario.yaml.value, plan);
  const merged = mergedFor(scenario.yaml.value, 'names' in chain ? chain.names : []);
  return readSettings(set).reduce<unknown>(withSetting, merged);
}
