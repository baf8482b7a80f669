import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { scenarioJsonSchema } from '../reference/scenario-json-schema.ts';

const FILE = 'docs/scenario.schema.json';

test('the published schema is the one that the model gives (UPDATE_SCHEMA=1 writes it)', () => {
  const text = `${JSON.stringify(scenarioJsonSchema(), null, 2)}\n`;
  if (process.env['UPDATE_SCHEMA'] === '1') writeFileSync(FILE, text);
  expect(readFileSync(FILE, 'utf8')).toBe(text);
});

test('it is draft 7 and explains every field', () => {
  const schema = scenarioJsonSchema();
  expect(schema['$schema']).toBe('http://json-schema.org/draft-07/schema#');
  const bare: string[] = [];
  walk(schema, '', bare);
  expect(bare).toEqual([]);
});

/** Collect fields without a description. */
function walk(node: unknown, path: string, bare: string[]): void {
  if (typeof node !== 'object' || node === null) return;
  const { properties } = node as { properties?: Record<string, { description?: string }> };
  for (const [name, field] of Object.entries(properties ?? {})) {
    if (field.description === undefined) bare.push(`${path}/${name}`);
  }
  for (const [key, child] of Object.entries(node)) walk(child, `${path}/${key}`, bare);
}
