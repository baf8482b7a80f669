import { expect, test } from 'vitest';
import { fullerWords, standingWords } from '../../../src/cli/serve/standing-words.ts';

test.each([
  [1, 'A first look at 1 plan; ', 'This page comes from 1 run; '],
  [3, 'A first look at 3 plans; ', 'This page comes from 3 runs; '],
])('%i of them', (plans, first, made) => {
  const standing = { state: 'good', edition: 1, pageOf: 1 } as const;
  expect(standingWords('home.yaml', standing, { plans, whole: false })).toContain(first);
  expect(fullerWords('home.yaml', plans)).toContain(made);
});

test('what stands above the answer of a whole page fits a line of a phone', () => {
  const standing = { state: 'good', edition: 1, pageOf: 1 } as const;
  const words = standingWords('home.yaml', standing, { plans: 3, whole: true });
  expect(words).toContain('home.yaml');
  expect(words.length).toBeLessThan(48);
});
