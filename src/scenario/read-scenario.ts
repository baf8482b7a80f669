import * as z from 'zod';
import { InputProblems } from '../units/problem.ts';
import { checkPlan } from './check-plan.ts';
import { doubtFindings } from './checks/doubts.ts';
import { fittedFindings } from './checks/fitted.ts';
import { planFindings } from './checks/plan-findings.ts';
import { mapping, type UncheckedMapping } from './checks/tolerant-readers.ts';
import { givenNumber } from './edits/scenario-facts.ts';
import { doubtsModel } from './model/doubts.ts';
import { fittedModel } from './model/fitted.ts';
import { FUELS } from './model/money.ts';
import { planModel, type ScenarioData } from './model/scenario-model.ts';
import { mergedFor, planChain, planNames } from './plan-chain.ts';
import type { PreparedPlan } from './prepared.ts';
import { unitAt } from './unit-at.ts';
import { placed } from './unplaced-problem.ts';
import { modelOf, validate } from './validate.ts';
import { isMapping } from './yaml/merge-patch.ts';
import { valueWords } from './yaml/path-words.ts';
import { readYaml, type YamlFile } from './yaml/read-yaml.ts';

/** A scenario file that was read and checked, plan by plan. */
export interface Scenario {
  /** Name of the file as the person gave it. */
  readonly file: string;
  readonly title: string;
  /** Whether the home, its people and place are made up. */
  readonly invented: boolean;
  /** Plans in the order of the file; the first is the baseline. */
  readonly plans: readonly ScenarioPlan[];
  /** Path of the weather file, relative to the scenario file. */
  readonly weather: string;
  /** Paths of all files it needs, weather first, relative to the scenario file. */
  readonly files: readonly string[];
  /** What has to be bought for each plan, by its name. */
  readonly purchases: ReadonlyMap<string, PreparedPlan['purchases']>;
  /** What is not known exactly, by RFC 6901 pointers, low and high in the documented units. */
  readonly doubts: readonly {
    readonly path: string;
    readonly low: number;
    readonly high: number;
  }[];
  /** What a log told, by RFC 6901 pointers: the value in the file, its range, and what stood there before. */
  readonly fitted: readonly FittedValue[];
  /** The file as plain values, with the place of each. */
  readonly yaml: YamlFile;
  /** Plans that were checked when the file was read, as they are meant, by name. */
  readonly checked: ReadonlyMap<string, ScenarioData>;
}

/** A value that was fitted to a log. */
export interface FittedValue {
  readonly path: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Null where nothing stood there. */
  readonly from: number | null;
  /** Of the value, as the model has it; empty for none. */
  readonly unit: string;
  /** Factor that was found and scales the value together with others; null where it was found itself. */
  readonly by: string | null;
  /** Whether the log tells it. */
  readonly told: boolean;
  readonly log: string;
}

/** What to check beyond the file itself; everything where not given. */
export interface CheckScope {
  /** Names of plans; those that the file does not have are passed over. */
  readonly plans?: readonly string[] | 'first' | 'all';
  /** Whether the low and high of each doubt could stand in the scenario. */
  readonly doubts?: boolean;
}

export interface ScenarioPlan {
  readonly name: string;
  /** What it asks, in one sentence; empty where the file does not say. */
  readonly description: string;
  /** The plan it builds on. */
  readonly basedOn: string | null;
}

/**
 * Read a scenario file and check it: the file itself, and the plans and doubts in scope.
 *
 * What is wrong with a plan out of scope stays unsaid unless the schema of the file forbids it, and
 * files that only such a plan names are not listed. `preparePlan` checks such a plan when it comes.
 *
 * @param text  YAML 1.2
 * @param file  its name, for messages
 * @throws InputProblems with everything that is wrong, each with its place
 */
export function readScenario(text: string, file: string, scope: CheckScope = {}): Scenario {
  const check = (yaml: YamlFile) => checkScenario(yaml, scope);
  return check(readYaml(text, file, check));
}

/** Check a scenario whose YAML was read already; see `readScenario`. @throws InputProblems */
export function checkScenario(yaml: YamlFile, scope: CheckScope): Scenario {
  const { file, value: raw } = yaml;
  if (!isMapping(raw)) {
    const got = raw === null || raw === undefined ? 'an empty file' : valueWords(raw);
    const expected = 'a mapping with title, weather, home ...';
    throw new InputProblems([{ file, line: 1, column: 1, where: '', expected, got, hint: '' }]);
  }
  const all = planNames(raw);
  const names = inScope(all, scope.plans ?? 'all');
  const base = validate(raw);
  const findings = [
    ...base.findings,
    ...planFindings(raw, withParents(raw, names)),
    ...(scope.doubts === false ? [] : doubtFindings(raw)),
    ...fittedFindings(raw),
  ];
  const problems = placed(findings, raw, [{ by: 'file', yaml, under: [] }]);
  const checked = new Map<string, ScenarioData>();
  for (const name of names) {
    const plan = checkPlan(yaml, name, base.data, problems);
    if (plan.data !== null) checked.set(name, plan.data);
    problems.push(...plan.problems);
  }
  if (problems.length > 0) throw new InputProblems(problems.sort((a, b) => a.line - b.line));
  if (all.length === 0) checked.set(AS_LIVED.name, base.data!);
  const data = mapping(raw);
  return {
    file,
    title: String(data['title']),
    invented: data['invented'] === true,
    plans: all.length === 0 ? [AS_LIVED] : all.map((name) => planOf(raw, name)),
    weather: String(data['weather']),
    files: filesOf(raw, names),
    purchases: purchasesOf(raw),
    doubts: doubtsOf(raw),
    fitted: fittedOf(raw),
    yaml,
    checked,
  };
}

function inScope(
  all: readonly string[],
  plans: NonNullable<CheckScope['plans']>,
): readonly string[] {
  if (plans === 'all') return all;
  if (plans === 'first') return all.slice(0, 1);
  return all.filter((name) => plans.includes(name));
}

/** Some plans and those they build on, in the order of the file. */
function withParents(raw: UncheckedMapping, names: readonly string[]): readonly string[] {
  const reached = new Set(
    names.flatMap((name) => {
      const chain = planChain(raw, name);
      return 'names' in chain
        ? chain.names
        : 'cycle' in chain
          ? [name, ...chain.cycle]
          : [name, chain.missing.child];
    }),
  );
  return planNames(raw).filter((name) => reached.has(name));
}

function planOf(raw: unknown, name: string): ScenarioPlan {
  const plan = mapping(raw, 'plans', name);
  const on = plan['based on'];
  return {
    name,
    description: typeof plan['description'] === 'string' ? plan['description'] : '',
    basedOn: typeof on === 'string' ? on : null,
  };
}

function purchasesOf(raw: unknown): Scenario['purchases'] {
  const plans = z.record(z.string(), planModel).safeParse(mapping(raw)['plans'] ?? {});
  return new Map(
    Object.entries(plans.data ?? {}).map(([name, { purchases = [] }]) => [
      name,
      purchases.map(({ what, price, lasts }) => ({ what, price, lastsYears: lasts })),
    ]),
  );
}

function doubtsOf(raw: unknown): Scenario['doubts'] {
  const doubts = doubtsModel.safeParse(mapping(raw)['doubts'] ?? {});
  return Object.entries(doubts.data ?? {}).map(([path, [low, high]]) => ({ path, low, high }));
}

function fittedOf(raw: unknown): FittedValue[] {
  const fitted = fittedModel.safeParse(mapping(raw)['fitted'] ?? {});
  return Object.entries(fitted.data ?? {}).map(([path, { low, high, log, ...rest }]) => {
    const { from = null, by = null, told = true } = rest;
    const unit = unitAt(modelOf(raw), path);
    return { path, value: Number(givenNumber(raw, path)), low, high, from, unit, by, told, log };
  });
}

function filesOf(raw: unknown, names: readonly string[]): string[] {
  const base = mapping(raw);
  const merged = [
    base,
    ...names.map((name) => {
      const chain = planChain(raw, name);
      return mapping('names' in chain ? mergedFor(raw, chain.names) : {});
    }),
  ];
  const prices = merged.flatMap((one) =>
    FUELS.map((fuel) => mapping(one['money'], fuel)['prices']),
  );
  const files = [...prices, ...merged.flatMap(levelFiles)].filter(
    (path) => typeof path === 'string',
  );
  return [...new Set([String(base['weather']), ...files])];
}

/** Files of outdoor levels of the species that a scenario names itself. */
const levelFiles = (raw: UncheckedMapping): unknown[] =>
  Object.values(mapping(raw['air'], 'own species')).map((own) => mapping(own, 'outdoors')['file']);

const AS_LIVED: ScenarioPlan = { name: 'as-lived', description: '', basedOn: null };
