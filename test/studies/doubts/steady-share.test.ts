import { expect, test } from 'vitest';
import { steadyShare } from '../../../src/studies/doubts/steady-share.ts';
import type { WeighSetup } from '../../../src/studies/verdict/weigh-plan.ts';
import { somePlan } from '../some-plan.ts';

test('the range moves with the draw: a saving that is no longer sure comes out otherwise', () => {
  const plan = (energy: number) => ({ measures: somePlan('a', { energy }) });
  const setup = {
    ...{ baseline: plan(1000), plan: plan(960), range: { low: -60, high: -30 } },
    weigh: ({ range }: Pick<WeighSetup, 'range'>) =>
      ({ verdict: range.high < 0 ? 'buy' : 'not needed' }) as never,
  };
  // 40 less as things are; in the draws 40, 5, 45 and 9.
  const changes = [-40, -5, -45, -9];
  const pair = [plan(1000), plan(960)].map((one) => ({ ...one, figures: null as never }));
  const draws = {
    pairs: changes.map(() => [pair[0]!, pair[1]!] as const),
    changesOf: () => changes,
  };
  // At 35 and 31 more the end of the range is above nought.
  expect(steadyShare(setup, draws)).toBe(0.5);
});
