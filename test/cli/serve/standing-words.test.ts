import { expect, test } from 'vitest';
import { standingWords } from '../../../src/cli/serve/standing-words.ts';

test.each([
  [1, false, 'A first look at 1 plan; '],
  [3, false, 'A first look at 3 plans; '],
  [1, true, 'It comes from 1 run; '],
  [3, true, 'It comes from 3 runs; '],
])('%i of them, whole: %s', (plans, whole, words) => {
  const standing = { state: 'good', edition: 1, pageOf: 1 } as const;
  expect(standingWords('home.yaml', standing, { plans, whole })).toContain(words);
});
