import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { Scenario } from '../../scenario/read-scenario.ts';
import { validate } from '../../scenario/validate.ts';
import { pointerSteps } from '../../scenario/yaml/json-pointer.ts';
import { valueAt } from '../../scenario/yaml/path-words.ts';
import type { DoubtfulInput } from './doubtful-inputs.ts';

/** The doubts that a scenario states, in its order, as one plan has them. */
interface StatedDoubts {
  readonly inputs: DoubtfulInput[];
  /** Paths at which this plan neither gives nor assumes a number. */
  readonly unknown: string[];
  /** Paths at which this plan gives a number outside the range: it has something else there. */
  readonly outside: string[];
}

/**
 * @param raw  the plan's merged scenario as plain values, as `variedScenario` gives it
 */
export function statedDoubts(scenario: Scenario, plan: PreparedPlan, raw: unknown): StatedDoubts {
  const { data } = validate(raw);
  const stated: StatedDoubts = { inputs: [], unknown: [], outside: [] };
  for (const { path, low, high } of scenario.doubts) {
    const given = valueAt(data, pointerSteps(path) ?? []);
    const value =
      typeof given === 'number' ? given : plan.assumed.find((row) => row.path === path)?.value;
    if (typeof value !== 'number') stated.unknown.push(path);
    else if (value === given && !(value >= low && value <= high)) stated.outside.push(path);
    else stated.inputs.push({ path, value, low, high, source: SOURCE });
  }
  return stated;
}

const SOURCE = 'stated in the scenario';
