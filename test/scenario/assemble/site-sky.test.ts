import { expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../src/scenario/read-scenario.ts';
import { homeWith, readingProblems } from '../problems-of.ts';

const withSky = (sky: string): string =>
  homeWith('').replace('elevation: 30', `elevation: 30, sky: ${sky}`);
const skyOf = (text: string) =>
  preparePlan(readScenario(text, 'h.yaml'), { plan: null, set: [], files: new Map() }).home.site
    .sky;

test('the sky is uneven unless the site says even', () => {
  expect(skyOf(homeWith(''))).toBe('uneven');
  expect(skyOf(withSky('uneven'))).toBe('uneven');
  expect(skyOf(withSky('even'))).toBe('even');
});

test('another sky is refused with those there are', () => {
  expect(readingProblems(withSky('clear'))).toEqual([
    'h.yaml:3:58: site.sky: expected one of: uneven, even, got "clear"',
  ]);
});
