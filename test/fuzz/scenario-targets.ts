import { readFileSync } from 'node:fs';
import { stringify } from 'yaml';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { readScenario, type Scenario } from '../../src/scenario/read-scenario.ts';
import { readYaml } from '../../src/scenario/yaml/read-yaml.ts';
import type { Chooser } from './chooser.ts';
import { mutateText, mutateTree } from './mutate.ts';
import { oddName, oddQuantity, oddValue } from './odd-values.ts';
import type { Target } from './targets.ts';
import { wrongWith } from './verdict.ts';

const ALIKE = [
  ...['always-on', 'nineteen', 'fifteen-at-night', 'smart-valves', 'valve-sensors'],
  ...['loft-and-draughts', 'dry-bedroom-gated', 'alerts-always'],
];
/** The demonstration homes, without plans that change nothing of a kind of its own: each is checked. */
const HOMES = ['flat', 'stove-cottage', 'terrace'].map((name) =>
  ALIKE.reduce(
    (text, plan) => text.replace(new RegExp(`^  ${plan}:\\n(?: {4}.*\\n)+`, 'm'), ''),
    readFileSync(`scenarios/${name}.yaml`, 'utf8'),
  ),
);
const TREES = HOMES.map((text) => readYaml(text, 'home.yaml').value);

/** Read a scenario and prepare its first and last plan. */
const read = (
  text: string,
  set: readonly string[] = [],
  files: ReadonlyMap<string, string> = NONE,
) =>
  wrongWith(() => {
    const scenario = scenarioOf(text);
    for (const plan of [scenario.plans[0], scenario.plans.at(-1)]) {
      const prepared = preparePlan(scenario, { plan: plan!.name, set, files });
      if (JSON.stringify(prepared.assumed).includes('null,"low":null')) return 'assumed nothing';
    }
    return null;
  });
const NONE: ReadonlyMap<string, string> = new Map();

/** Read once where the case is in what is laid on it. */
function scenarioOf(text: string): Scenario {
  if (last?.text !== text) last = { text, scenario: readScenario(text, 'case.yaml') };
  return last.scenario;
}
let last: { readonly text: string; readonly scenario: Scenario } | null = null;

/** The demonstration homes with lines, characters and numbers changed. */
export const scenarioText: Target = {
  make: (choose) => mutateText(choose.pick(HOMES), choose),
  judge: (text) => read(text),
};

/** The demonstration homes with values and keys changed: types, units, extreme and built-in names. */
export const scenarioTree: Target = {
  make: (choose) =>
    stringify(mutateTree(choose.pick(TREES), choose), { aliasDuplicateObjects: false }),
  judge: (text) => read(text),
};

/** Words of `--set`: pointers to something and to nothing, values legal and odd. */
export const setPointers: Target = {
  make: (choose) =>
    JSON.stringify(Array.from({ length: 1 + choose.index(3) }, () => setting(choose))),
  judge: (text) => read(HOMES[0]!, JSON.parse(text) as string[]),
};

function setting(choose: Chooser): string {
  let at: unknown = TREES[0];
  let pointer = '';
  while (typeof at === 'object' && at !== null && (pointer === '' || choose.chance(0.8))) {
    const keys = Object.keys(at);
    const key = keys.length === 0 || choose.chance(0.08) ? oddName(choose) : choose.pick(keys);
    pointer += `/${choose.chance(0.95) ? key.replaceAll('~', '~0').replaceAll('/', '~1') : key}`;
    at = (at as Record<string, unknown>)[key];
  }
  const value = choose.chance(0.3) ? oddQuantity(choose) : JSON.stringify(oddValue(choose));
  return choose.chance(0.97)
    ? `${pointer}=${value}`
    : choose.pick(['', '=', '/', '/=1', '//=1', 'x']);
}

/** A home with one plan whose change is an odd merge patch. */
export const planPatches: Target = {
  make: (choose) => {
    const { plans, ...home } = TREES[0] as Record<string, unknown>;
    const change = patchOf(home, choose);
    const odd = choose.chance(0.1) ? { [oddName(choose)]: oddValue(choose) } : {};
    const on = choose.chance(0.2)
      ? { 'based on': choose.pick(['now', 'odd', oddName(choose)]) }
      : {};
    return stringify({ ...home, plans: { now: { change: {} }, odd: { change, ...on, ...odd } } });
  },
  judge: (text) => read(text),
};

/** Some of the keys of a mapping, some of them odd, some removed. */
function patchOf(value: unknown, choose: Chooser): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value) || choose.chance(0.1)) {
    return choose.chance(0.5) ? null : mutateTree(value, choose);
  }
  const keys = Object.keys(value);
  const chosen = keys.length === 0 ? [] : [choose.pick(keys), choose.pick(keys)];
  return Object.fromEntries(
    chosen.map((key) => [
      choose.chance(0.95) ? key : oddName(choose),
      patchOf((value as Record<string, unknown>)[key], choose),
    ]),
  );
}

const TARIFF = Array.from({ length: 60 }, (_, k) => {
  const time = new Date(Date.UTC(2023, 0, 1) + k * 1_800_000).toISOString().slice(0, 16);
  return `${time}Z,${(0.2 + 0.01 * (k % 7)).toFixed(2)}`;
});
const TARIFF_TEXT = ['time,price', ...TARIFF].join('\n');
const WITH_TARIFF = HOMES[0]!.replace(
  /^money:.*$/m,
  'money: { currency: EUR, electricity: { prices: tariff.csv } }',
);

/** A file of prices with lines, characters and numbers changed. */
export const tariffs: Target = {
  make: (choose) => mutateText(TARIFF_TEXT, choose),
  judge: (text) => read(WITH_TARIFF, [], new Map([['tariff.csv', text]])),
};
