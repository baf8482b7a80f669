import { givenNumber } from '../../scenario/edits/scenario-facts.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { Scenario } from '../../scenario/read-scenario.ts';
import type { DoubtfulInput } from './doubtful-inputs.ts';

/** The doubts that a scenario states or a fit left, in its order, as one plan has them. */
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
  const stated: StatedDoubts = { inputs: [], unknown: [], outside: [] };
  for (const { path, low, high, source } of doubtsAndFits(scenario)) {
    const given = givenNumber(raw, path);
    const value = given ?? plan.assumed.find((row) => row.path === path)?.value;
    if (typeof value !== 'number') stated.unknown.push(path);
    else if (value === given && !(value >= low && value <= high)) stated.outside.push(path);
    else stated.inputs.push({ path, value, low, high, source });
  }
  return stated;
}

/** Stated doubts, then fitted values that nobody doubts besides: their range is what the log left. */
function doubtsAndFits({ doubts, fitted }: Scenario) {
  const paths = new Set(doubts.map(({ path }) => path));
  return [
    ...doubts.map((doubt) => ({ ...doubt, source: STATED })),
    ...fitted
      .filter(({ path }) => !paths.has(path))
      .map((fit) => ({ ...fit, source: `fitted to ${fit.log}` })),
  ];
}

/** Source of a doubt that the scenario itself names. */
export const STATED = 'stated in the scenario';
