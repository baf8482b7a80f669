import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { AGES } from '../../../src/scenario/choices.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../src/scenario/read-scenario.ts';
import { scenarioJsonSchema } from '../../reference/scenario-json-schema.ts';

const PAGE = readFileSync('docs/scenario.md', 'utf8');

test('the example of the page is a scenario, and all its plans can be prepared', () => {
  const [, text = ''] = /```yaml\n(title:[\s\S]*?)```/.exec(PAGE) ?? [];
  const scenario = readScenario(text, 'scenario.md');
  expect(scenario.plans).toHaveLength(3);
  for (const { name } of scenario.plans) {
    expect(preparePlan(scenario, { plan: name, set: [], files: new Map() }).plan).toBe(name);
  }
});

test('the page names every key and every choice that the schema knows', () => {
  const missing = [...namesIn(scenarioJsonSchema())].filter(
    (name) => !PAGE.includes(`\`${name}\``),
  );
  const bands = AGES_BY_EXAMPLE.filter((name) => missing.includes(name));
  expect(missing.filter((name) => !bands.includes(name))).toEqual([]);
});

// The page shows one age band and says that a year will do.
const AGES_BY_EXAMPLE: readonly string[] = AGES.filter((age) => age !== '1900-1929');

function namesIn(node: unknown, found = new Set<string>()): Set<string> {
  if (typeof node !== 'object' || node === null) return found;
  const { properties, enum: words } = node as { properties?: object; enum?: unknown[] };
  for (const name of [...Object.keys(properties ?? {}), ...(words ?? [])]) found.add(String(name));
  for (const child of Object.values(node)) namesIn(child, found);
  return found;
}
