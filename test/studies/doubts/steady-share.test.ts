import { expect, test } from 'vitest';
import { steadyShare } from '../../../src/studies/doubts/steady-share.ts';
import type { WeighSetup } from '../../../src/studies/verdict/weigh-plan.ts';
import { somePlan } from '../some-plan.ts';

const plan = (energy: number) => ({ measures: somePlan('a', { energy }) });

/** Baseline and a plan that saves 40 as things are, with a verdict by the range alone, and draws of what it changes. */
function drawn(range: WeighSetup['range'], changes: readonly number[]) {
  const setup = {
    ...{ baseline: plan(1000), plan: plan(960), range },
    weigh: (weighed: Pick<WeighSetup, 'range'>) =>
      ({ verdict: weighed.range.high < 0 ? 'worth it' : 'too little' }) as never,
  };
  const pair = [plan(1000), plan(960)].map((one) => ({ ...one, figures: null as never }));
  const pairs = changes.map(() => [pair[0]!, pair[1]!] as const);
  return steadyShare(setup, { pairs, changesOf: () => changes });
}

test('a plan that saves comes out alike in the draws in which it saves, however little', () => {
  expect(drawn({ low: -60, high: -3 }, [-40, -5, -45, 9])).toBe(0.75);
});

test('a plan that may cost comes out alike in the draws in which it does', () => {
  // It does not save in nine of ten draws, and so is too little as things are.
  expect(drawn({ low: -60, high: 15 }, [-40, -50, 20, -45])).toBe(0.25);
});
