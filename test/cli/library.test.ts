import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import * as charts from '../../src/charts.ts';
import * as library from '../../src/index.ts';
import { expectShown } from '../reference/shown.ts';
import { requireBuild } from './built-program.ts';

const page = readFileSync('docs/library.md', 'utf8');
const blocks = (language: string): string[] =>
  [...page.matchAll(new RegExp(`\`\`\`${language}\\n(.*?)\`\`\``, 'gs'))].map(([, text]) => text!);

beforeAll(requireBuild);

test('the examples of the page run from the build and print what the page says', () => {
  const shown = blocks('text');
  expect(shown.length).toBe(blocks('js').length);
  for (const [k, example] of blocks('js').entries()) {
    expect(example.trim().split('\n').length).toBeLessThanOrEqual(22);
    const printed = execFileSync('node', ['--input-type=module', '-e', example], {
      encoding: 'utf8',
    });
    expectShown('docs/library.md', shown[k]!, printed);
  }
});

test('the page names every function and class of the library, and some 20 there are', () => {
  const names = Object.keys(library);
  expect(names.filter((name) => !page.includes(`\`${name}`))).toEqual([]);
  expect(names.length).toBeLessThanOrEqual(20);
});

test('pictures are a part of their own', () => {
  expect(Object.keys(charts)).toContain('drawCharts');
  expect(Object.keys(library).filter((name) => Object.hasOwn(charts, name))).toEqual([]);
});
