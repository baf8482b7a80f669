import { isDeepStrictEqual } from 'node:util';
import { expect, test } from 'vitest';
import { meteredHeat } from '../../../src/fit/readings/metered-heat.ts';
import type { Log, LoggedSeries } from '../../../src/log/log.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import type { PreparedPlan } from '../../../src/scenario/prepared.ts';
import { SEED } from '../../../src/scenario/presets/step.ts';
import { readScenario, type Scenario } from '../../../src/scenario/read-scenario.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { madeWeather } from '../../engine/homes.ts';
import type { SchemaNode } from '../../reference/described-schema.ts';
import { scenarioJsonSchema } from '../../reference/scenario-json-schema.ts';
import { HOMES } from './homes-with-everything.ts';
import { keysOf, type SchemaKey } from './schema-keys.ts';

const SCHEMA = scenarioJsonSchema() as SchemaNode;

test('each default is what the program takes where the key is left out', () => {
  const tried: Tried = new Map();
  for (const home of HOMES) {
    const scenario = readScenario(JSON.stringify(home), 'home.yaml');
    tryIn({ scenario, bare: prepared(scenario) }, home, SCHEMA, { path: '', pointer: '' }, tried);
  }
  const proven = new Set(
    keysOf(SCHEMA).flatMap((key) => (tried.get(key.path) === 'proven' ? [wordsOf(key)] : [])),
  );
  const open = keysOf(SCHEMA)
    .filter(({ field, path }) => field.default !== undefined && !ELSEWHERE.includes(path))
    .map((key) => {
      const spell = key.name === 'days' || key.name === 'months';
      const is = spell && proven.has(wordsOf(key)) ? 'proven' : tried.get(key.path);
      return { path: key.path, words: JSON.stringify(key.field.default), is };
    });
  expect(open.length).toBeGreaterThan(200); // counted
  expect(
    open
      .filter(({ is }) => is !== 'proven')
      .map(({ path, words, is }) => `${path}: ${words}, ${is}`),
  ).toEqual([]);
});

/** What no plan depends on, proven below. */
const ELSEWHERE: readonly string[] = ['/invented', '/log/gas beside heating'];

/** Days and months are one field of the model wherever a span of time may stand. */
const wordsOf = ({ name, field }: SchemaKey): string => `${name} ${JSON.stringify(field)}`;

test('a home is not invented unless it says so, which no setting can change', () => {
  const invented = (more: object) =>
    readScenario(JSON.stringify({ ...HOMES[0], ...more }), 'home.yaml').invented;
  expect(SCHEMA.properties!['invented']!.default).toBe(false);
  expect([invented({}), invented({ invented: true })]).toEqual([false, true]);
});

test('shares of a meter that heat no rooms may be given in percent', () => {
  const given = { 'gas beside heating': '15 %', 'electricity beside heating': '10 %' };
  const { checked } = readScenario(
    JSON.stringify({ ...(HOMES[0] as object), log: given }),
    'h.yaml',
  );
  const [data] = checked.values();
  expect(data!.log).toMatchObject({
    'gas beside heating': 0.15,
    'electricity beside heating': 0.1,
  });
});

test('a fit takes as much of the gas for water and cooking as the schema says', () => {
  const gas: LoggedSeries = {
    ...{ quantity: 'gas', place: 'home', room: null, device: null, reading: 'mean', from: 'm.csv' },
    ...{ times: Float64Array.of(0, 86_400, 172_800), values: Float64Array.of(500, 1000, 2000) },
  };
  const log: Log = { series: [gas], start: 0, end: 172_800 };
  const home = prepared(readScenario(JSON.stringify(HOMES[0]), 'home.yaml')) as PreparedPlan;
  const heat = (share: number | null) => {
    const beside = { gas: share, electricity: null };
    return [...meteredHeat(log, home.home, madeWeather(), beside)!.series.values];
  };
  const usual = SCHEMA.properties!['log']!.properties!['gas beside heating']!.default as number;
  expect(heat(null)).toEqual(heat(usual));
  expect(heat(null)).not.toEqual(heat(usual / 2));
});

interface Home {
  readonly scenario: Scenario;
  readonly bare: unknown;
}
interface Place {
  /** In the schema, as in `keysOf`, and in the home (RFC 6901). */
  readonly path: string;
  readonly pointer: string;
}
type Tried = Map<string, string>;

/** Try the defaults of keys that a part of a home leaves out, and of those within it. */
function tryIn(home: Home, value: unknown, node: SchemaNode, at: Place, tried: Tried): void {
  for (const [form, path] of formsOf(node, at.path, value)) {
    const parts = Object.entries(typeof value === 'object' && value !== null ? value : {});
    for (const [name, part] of parts) {
      const [inner, step] = partOf(form, name);
      const place = { path: `${path}${step}`, pointer: `${at.pointer}/${name}` };
      if (inner !== undefined) tryIn(home, part, inner, place, tried);
    }
    if (Array.isArray(value) || typeof value !== 'object') continue;
    for (const [name, field] of Object.entries(form.properties ?? {})) {
      const known = tried.get(`${path}/${name}`);
      if (field.default === undefined || known === 'proven' || Object.hasOwn(value!, name))
        continue;
      tried.set(`${path}/${name}`, verdictOn(home, `${at.pointer}/${name}`, field));
    }
  }
}

function partOf(form: SchemaNode, name: string): readonly [SchemaNode | undefined, string] {
  if (form.items !== undefined) return [form.items as SchemaNode, '[]'];
  const { properties = {}, additionalProperties: other } = form;
  if (Object.hasOwn(properties, name)) return [properties[name], `/${name}`];
  return [typeof other === 'object' ? other : undefined, '/*'];
}

/**
 * The home without the key must be the home with its default, and not the home with another value, so
 * that a key which does nothing here proves nothing.
 */
function verdictOn({ scenario, bare }: Home, pointer: string, field: SchemaNode): string {
  const setTo = (value: unknown) => prepared(scenario, `${pointer}=${JSON.stringify(value)}`);
  const usual = setTo(field.default);
  if (usual === null) return 'not allowed here';
  if (!isDeepStrictEqual(bare, usual)) return 'another value is taken';
  const matters = othersThan(field).some((other) => !isDeepStrictEqual(bare, setTo(other)));
  return matters ? 'proven' : 'does nothing here';
}

/** The plan of a home, without lists of what was assumed; null where it is refused. */
function prepared(scenario: Scenario, ...set: readonly string[]): unknown {
  try {
    const plan = preparePlan(scenario, { plan: null, set, files: new Map() });
    const { assumed: _assumed, cautions: _cautions, home, household, ...rest } = plan;
    const sources = home.sources.map((source) => ({ ...UNSAID_BY_SOURCES, ...source }));
    return {
      ...rest,
      household: { ...UNSAID_BY_HOUSEHOLDS, ...household },
      home: { ...home, sources },
    };
  } catch (error) {
    if (error instanceof InputProblems) return null;
    throw error;
  }
}

/** What the engine takes where a source of heat or a household does not say. */
const UNSAID_BY_SOURCES = { backup: 0, sharing: 'in proportion' };
const UNSAID_BY_HOUSEHOLDS = { seed: SEED, openWhenMild: 0 };

/** Legal values that are not the default: the next one, and the ends of the range. */
function othersThan({ default: usual, enum: words, examples = [], ...field }: SchemaNode) {
  if (typeof usual === 'boolean') return [!usual];
  if (words !== undefined) return [words.find((word) => word !== usual)];
  if (typeof usual !== 'number') return [OTHER_WORDS.get(usual) ?? examples[0]];
  const { minimum = field.exclusiveMinimum ?? 0, maximum = usual + 1 } = field;
  if (Number.isInteger(usual) && usual < maximum) return [usual + 1, maximum, minimum];
  return [usual === maximum ? (usual + minimum) / 2 : (usual + maximum) / 2];
}

const OTHER_WORDS = new Map<unknown, unknown>([
  ['south', 'north'],
  ['1950-1966', 'before 1900'],
]);

/** The forms that a value may have; of those that a kind tells apart, the one it names. */
function formsOf(node: SchemaNode, path: string, value: unknown) {
  const forms = node.anyOf ?? node.oneOf;
  if (forms === undefined) return [[node, path] as const];
  const { kind } = (value ?? {}) as { kind?: unknown };
  return forms
    .map((form, k) => [form, `${path}(${k + 1})`] as const)
    .filter(([{ properties }]) => (properties?.['kind']?.const ?? kind) === kind);
}
