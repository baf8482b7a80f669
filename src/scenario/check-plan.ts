import type { Problem } from '../units/problem.ts';
import { mapping } from './checks/tolerant-readers.ts';
import type { ScenarioData } from './model/scenario-model.ts';
import { mergedFor, planChain } from './plan-chain.ts';
import { placed } from './unplaced-problem.ts';
import { validate } from './validate.ts';
import { editedLists } from './yaml/edited-lists.ts';
import type { Layer } from './yaml/layers.ts';
import { isMapping } from './yaml/merge-patch.ts';
import type { YamlFile } from './yaml/read-yaml.ts';

/** A plan as it is meant, null where it is wrong, and what is wrong with it that was not said yet. */
export interface CheckedPlan {
  readonly data: ScenarioData | null;
  readonly problems: readonly Problem[];
}

/**
 * Check the scenario with the changes of a plan laid on.
 *
 * @param base   the scenario as it is without any plan, null where that is wrong
 * @param known  problems that were said already, of the file and of plans before this one
 */
export function checkPlan(
  yaml: YamlFile,
  name: string,
  base: ScenarioData | null,
  known: readonly Problem[],
): CheckedPlan {
  const chain = planChain(yaml.value, name);
  if (!('names' in chain)) return UNSAID;
  const plans = mapping(yaml.value, 'plans');
  const changes = chain.names.map((one) => mapping(plans[one])['change']);
  if (!changes.every(isMapping)) return UNSAID; // said already
  if (changes.every((change) => Object.keys(change).length === 0)) {
    return { data: base, problems: [] };
  }
  const merged = mergedFor(yaml.value, chain.names);
  const { data, findings } = validate(merged);
  const said = new Set(known.map(sameness));
  const problems = placed(findings, merged, planLayers(yaml, chain.names))
    .filter((problem) => !said.has(sameness(problem)))
    .map((problem) => ({ ...problem, where: `${problem.where} in plan ${name}` }));
  return { data, problems };
}

/** Where each part of a plan was written: the file, then the changes of the plans it builds on. */
export function planLayers(yaml: YamlFile, names: readonly string[]): Layer[] {
  const plans = mapping(yaml.value, 'plans');
  const change = (name: string, k: number): Layer => {
    const before = mergedFor(yaml.value, names.slice(0, k));
    const lists = editedLists(before, mapping(plans[name])['change']);
    return { by: 'file', yaml, under: ['plans', name, 'change'], lists };
  };
  return [{ by: 'file', yaml, under: [] }, ...names.map(change)];
}

/** A text that two problems share where one says no more than the other, be it of another plan. */
const sameness = ({ where, expected, got, line }: Problem): string =>
  JSON.stringify([where.replace(/ in plan .*$/, ''), expected, got, line]);

const UNSAID: CheckedPlan = { data: null, problems: [] };
