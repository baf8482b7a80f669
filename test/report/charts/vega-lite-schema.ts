import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Ajv } from 'ajv';
import { expect } from 'vitest';
import type { ChartSpec } from '../../../src/report/charts/chart.ts';

// The schema's texts are marked with formats (colours, addresses) that its own project does not check.
const schema = createRequire(import.meta.url).resolve('vega-lite/vega-lite-schema.json');
// It is large and used for few specifications, so making short code of it does not pay.
const validate = new Ajv({
  ...{ strict: false, validateFormats: false },
  ...{ inlineRefs: false, code: { optimize: false } },
}).compile(JSON.parse(readFileSync(schema, 'utf8')));

/** Holds a specification to the official schema that the package ships. */
export function expectValid(spec: ChartSpec): void {
  const ok = validate(spec);
  expect(ok ? [] : validate.errors?.slice(0, 5)).toEqual([]);
}

/** Whether the schema takes it. */
export const isValid = (spec: unknown): boolean => validate(spec) === true;
