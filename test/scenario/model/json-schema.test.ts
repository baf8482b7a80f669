import { readFileSync, writeFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { expect, test } from 'vitest';
import { scenarioModel } from '../../../src/scenario/model/scenario-model.ts';
import { ownSpecies } from '../../../src/species/own-species.ts';
import type { SchemaNode } from '../../reference/described-schema.ts';
import { scenarioJsonSchema } from '../../reference/scenario-json-schema.ts';
import { fieldsOf, type ModelField } from './model-fields.ts';
import { keysOf } from './schema-keys.ts';

const FILE = 'docs/scenario.schema.json';
const SCHEMA = scenarioJsonSchema() as SchemaNode;
const KEYS = keysOf(SCHEMA);
const OWN = ownSpecies({ name: 'radon', label: 'Radon', unit: 'units/m3' });
const FIELDS = fieldsOf(scenarioModel([OWN]), SCHEMA);

test('the published schema is the one that the model gives (UPDATE_SCHEMA=1 writes it)', () => {
  const text = `${JSON.stringify(SCHEMA, null, 1)}\n`;
  if (process.env['UPDATE_SCHEMA'] === '1') writeFileSync(FILE, text);
  expect(readFileSync(FILE, 'utf8')).toBe(text);
});

test('it is draft 7, and no part of it stands elsewhere, where some editors do not look', () => {
  expect(scenarioJsonSchema()['$schema']).toBe('http://json-schema.org/draft-07/schema#');
  expect(JSON.stringify(SCHEMA)).not.toMatch(/"(\$ref|allOf|\$defs|definitions)"/);
});

test('each of its keys has a description, a unit where it is a number, and an example', () => {
  expect(KEYS.length).toBeGreaterThan(900); // counted: 965 places of keys
  const lacking = (what: string, has: (field: SchemaNode) => boolean) =>
    KEYS.filter(({ field }) => !has(field)).map(({ path }) => `${path}: ${what}`);
  expect([
    ...lacking('no description', ({ description }) => description !== undefined),
    ...lacking('not one sentence', ({ description = '' }) => ONE_SENTENCE.test(description)),
    ...lacking('no unit', (field) => !hasNumbers(field) || UNIT.test(field.description ?? '')),
    ...lacking('no example', ({ examples }) => examples?.length === 1),
  ]).toEqual([]);
});

test('each form of a key says what the key is, for editors that show that of the written one', () => {
  const forms = KEYS.flatMap(({ path, field }) =>
    [...(field.anyOf ?? []), ...(field.oneOf ?? [])].map((form) => ({ path, field, form })),
  );
  expect(forms.length).toBeGreaterThan(200); // counted: 300 and more
  const silent = forms.filter(
    ({ field, form }) => !form.description?.startsWith(`${field.description}`),
  );
  expect(silent.map(({ path }) => path)).toEqual([]);
});

test('a key that may be left out says what then holds, or it belongs to one of several forms', () => {
  const silent = KEYS.filter(
    ({ field, must }) => !must && !field.description!.includes('; where not given, '),
  );
  const required = KEYS.filter(({ must }) => must);
  expect(required.filter(({ field }) => !field.description!.endsWith('; must be given'))).toEqual(
    [],
  );
  const names = [...new Set(silent.map(({ name }) => name))].sort();
  expect(names).toEqual(NOTHING_ASSUMED);
});

test('each example is valid where it stands, for an editor and for the program', () => {
  const ajv = new Ajv({ strict: false, code: { optimize: false } });
  const refused = KEYS.filter(({ field }) => {
    const [example] = field.examples!;
    return !ajv.compile(speakingOf(namesIn(example), field))(example);
  });
  expect(refused.map(({ path, field }) => `${path}: ${JSON.stringify(field.examples)}`)).toEqual(
    [],
  );
  const wrong = FIELDS.flatMap(({ path, model, node }: ModelField) => {
    const { success, error } = model.safeParse(node.examples![0]);
    return success ? [] : [`${path}: ${error.issues.map(({ message }) => message).join('; ')}`];
  });
  expect(wrong).toEqual([]);
  expect(FIELDS.length).toBeGreaterThan(900);
});

/** From a capital letter to the end without a full stop; "IEC 62682" and "0.3" are none. */
const ONE_SENTENCE = /^[A-Z][^.!?\n]*(\.[^\s][^.!?\n]*)*$/;
/** "[m, 0 to 3]", "[no unit]". */
const UNIT = / \[[^\]]+\]+/;

const hasNumbers = ({ type, anyOf }: SchemaNode): boolean =>
  [type].flat().includes('number') || (anyOf ?? []).some(hasNumbers);

/** Keys of which one out of several has to be given, or that make sense beside another. */
const NOTHING_ASSUMED: readonly string[] = [
  ...['ach50', 'air changes', 'area'],
  ...['day', 'night', 'night hours', 'price', 'prices'],
  ...['pane', 'room', 'rooms', 'opening', 'at', 'when', 'after', 'on waking'],
  ...['reading', 'over', 'under', 'windows', 'presence', 'before'],
  ...['tell', 'lamp', 'run', 'stop', 'open', 'close', 'setpoint'],
  ...['place', 'device'],
].sort();

/** A schema without keys that an example does not have, which cannot matter to it. */
function speakingOf(names: ReadonlySet<string>, node: SchemaNode): SchemaNode {
  const { properties, anyOf, oneOf, items, additionalProperties: more } = node;
  const each = (part: SchemaNode) => speakingOf(names, part);
  const kept = Object.entries(properties ?? {}).filter(([name]) => names.has(name));
  return {
    ...node,
    ...(properties && {
      properties: Object.fromEntries(kept.map(([name, part]) => [name, each(part)])),
    }),
    ...(anyOf && { anyOf: anyOf.map(each) }),
    ...(oneOf && { oneOf: oneOf.map(each) }),
    ...(items && { items: Array.isArray(items) ? items.map(each) : each(items as SchemaNode) }),
    ...(typeof more === 'object' && { additionalProperties: each(more) }),
  };
}

function namesIn(value: unknown, found = new Set<string>()): Set<string> {
  if (typeof value !== 'object' || value === null) return found;
  if (!Array.isArray(value)) for (const name of Object.keys(value)) found.add(name);
  for (const part of Object.values(value)) namesIn(part, found);
  return found;
}
