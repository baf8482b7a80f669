import { z } from 'zod';
import { InputProblems, type Problem } from '../units/problem.ts';
import { doubtFindings } from './checks/doubts.ts';
import { planFindings } from './checks/plan-findings.ts';
import { mapping } from './checks/tolerant-readers.ts';
import { doubtsModel } from './model/doubts.ts';
import { FUELS } from './model/money.ts';
import { planModel } from './model/scenario-model.ts';
import { mergedFor, planChain } from './plan-chain.ts';
import type { PreparedPlan } from './prepared.ts';
import { placed } from './unplaced-problem.ts';
import { validate } from './validate.ts';
import type { Layer } from './yaml/layers.ts';
import { isMapping } from './yaml/merge-patch.ts';
import { valueWords } from './yaml/path-words.ts';
import { readYaml, type YamlFile } from './yaml/read-yaml.ts';

/** A scenario file that was read and checked, plan by plan. */
export interface Scenario {
  /** As the person named the file. */
  readonly file: string;
  readonly title: string;
  /** Whether the home, its people and place are made up. */
  readonly invented: boolean;
  /** In the order of the file; the first is the baseline. */
  readonly plans: readonly ScenarioPlan[];
  /** Path of the weather file, relative to the scenario file. */
  readonly weather: string;
  /** Paths of all files it needs, weather first, relative to the scenario file. */
  readonly files: readonly string[];
  /** What has to be bought for each plan, by its name. */
  readonly buys: ReadonlyMap<string, PreparedPlan['buys']>;
  /** What is not known exactly, by RFC 6901 pointers, low and high in the documented units. */
  readonly doubts: readonly {
    readonly path: string;
    readonly low: number;
    readonly high: number;
  }[];
  /** The file as plain values, with the place of each. */
  readonly yaml: YamlFile;
}

export interface ScenarioPlan {
  readonly name: string;
  /** What it asks, in one sentence; empty where the file does not say. */
  readonly says: string;
  /** The plan it builds on. */
  readonly on: string | null;
}

/**
 * Read a scenario file and check it, with every plan's change laid on.
 *
 * @param text  YAML 1.2
 * @param file  its name, for messages
 * @throws InputProblems with everything that is wrong, each with its place
 */
export function readScenario(text: string, file: string): Scenario {
  const yaml = readYaml(text, file);
  const raw = yaml.value;
  if (!isMapping(raw)) {
    const got = raw === null || raw === undefined ? 'an empty file' : valueWords(raw);
    const expected = 'a mapping with title, weather, home ...';
    throw new InputProblems([{ file, line: 1, column: 1, where: '', expected, got, hint: '' }]);
  }
  const findings = [...validate(raw).findings, ...planFindings(raw), ...doubtFindings(raw)];
  const problems = placed(findings, raw, [{ by: 'file', yaml, under: [] }]);
  const names = Object.keys(mapping(raw['plans']));
  for (const name of names) problems.push(...planProblems(yaml, name, problems));
  if (problems.length > 0) throw new InputProblems(problems.sort((a, b) => a.line - b.line));
  const data = mapping(raw);
  return {
    file,
    title: String(data['title']),
    invented: data['invented'] === true,
    plans: names.length === 0 ? [AS_LIVED] : names.map((name) => planOf(raw, name)),
    weather: String(data['weather']),
    files: filesOf(raw, names),
    buys: buysOf(raw),
    doubts: doubtsOf(raw),
    yaml,
  };
}

/** Where each part of a plan was written: the file, then the changes of the plans it builds on. */
export function planLayers(yaml: YamlFile, names: readonly string[]): Layer[] {
  const change = (name: string): Layer => ({ by: 'file', yaml, under: ['plans', name, 'change'] });
  return [{ by: 'file', yaml, under: [] }, ...names.map(change)];
}

/** What is wrong with a plan's merged scenario and was not wrong before. */
function planProblems(yaml: YamlFile, name: string, known: readonly Problem[]): Problem[] {
  const chain = planChain(yaml.value, name);
  if (!('names' in chain)) return [];
  const plans = mapping(mapping(yaml.value)['plans']);
  if (chain.names.some((one) => !isMapping(mapping(plans[one])['change']))) return []; // said already
  const merged = mergedFor(yaml.value, chain.names);
  const { findings } = validate(merged);
  return placed(findings, merged, planLayers(yaml, chain.names))
    .filter((problem) => !known.some((other) => sameProblem(other, problem)))
    .map((problem) => ({ ...problem, where: `${problem.where} in plan ${name}` }));
}

function sameProblem(a: Problem, b: Problem): boolean {
  const where = a.where.replace(/ in plan .*$/, '');
  return where === b.where && a.expected === b.expected && a.got === b.got && a.line === b.line;
}

function planOf(raw: unknown, name: string): ScenarioPlan {
  const plan = mapping(mapping(mapping(raw)['plans'])[name]);
  const on = plan['on'];
  return {
    name,
    says: typeof plan['says'] === 'string' ? plan['says'] : '',
    on: typeof on === 'string' ? on : null,
  };
}

function buysOf(raw: unknown): Scenario['buys'] {
  const plans = z.record(z.string(), planModel).safeParse(mapping(raw)['plans'] ?? {});
  return new Map(
    Object.entries(plans.data ?? {}).map(([name, { buys = [] }]) => [
      name,
      buys.map(({ what, price, lasts }) => ({ what, price, lastsYears: lasts })),
    ]),
  );
}

function doubtsOf(raw: unknown): Scenario['doubts'] {
  const doubts = doubtsModel.safeParse(mapping(raw)['doubts'] ?? {});
  return Object.entries(doubts.data ?? {}).map(([path, [low, high]]) => ({ path, low, high }));
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
    FUELS.map((fuel) => mapping(mapping(one['money'])[fuel])['prices']),
  );
  const files = prices.filter((path) => typeof path === 'string');
  return [...new Set([String(base['weather']), ...files])];
}

const AS_LIVED: ScenarioPlan = { name: 'as-lived', says: '', on: null };
