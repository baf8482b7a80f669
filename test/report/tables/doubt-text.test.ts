import { expect, test } from 'vitest';
import { doubtText } from '../../../src/report/tables/doubt-text.ts';
import type { SampledDoubt } from '../../../src/studies/doubts/sampled-doubt.ts';

const figure = (p10: number, median: number, p90: number) => ({
  ...{ as_is: median, p10, median, p90, matters: [] },
});
const doubt: SampledDoubt = {
  ...{
    baseline: 'now',
    seed: 1,
    samples: 100,
    impossible: 0,
    step_minutes: 20,
    years: 1,
    inputs: [],
  },
  ...{ left_aside: [], differences: [] },
  plans: [
    {
      plan: 'now',
      money: figure(900, 1000, 1100),
      damp: figure(1752, 4380, 8760),
      cold: figure(1, 2, 3),
    },
  ],
};

test('wet hours of all rooms are told as a share of the time, cold as the hours a day that it comes in', () => {
  const home = { currency: 'GBP', rooms: 2, hours: 8760 };
  const text = doubtText(doubt, home, (pointer) => ({ name: pointer, unit: '' }), 80);
  // Two rooms have 17,520 hours a year.
  expect(text.replaceAll(/ +/g, ' ')).toContain(
    '[GBP] [% of the time] [h a day]\nnow 1000 (900 to 1100) 25 (10 to 50) 2.0 (1.0 to 3.0)',
  );
});

test('a figure of the values used that no draw agrees with is told, with what moves it one way only', () => {
  const home = { currency: 'GBP', rooms: 2, hours: 8760 };
  const input = { source: '', low: 0, high: 30000 };
  const told = (as_is: number, value: number) =>
    doubtText(
      {
        ...doubt,
        inputs: [
          { ...input, path: 'vents', value },
          { ...input, path: 'idle', value: 0 },
        ],
        plans: [
          {
            ...doubt.plans[0]!,
            money: {
              ...figure(900, 1000, 1100),
              as_is,
              matters: [{ path: 'vents', correlation: 0.8 }],
            },
          },
        ],
      },
      home,
      (pointer) => ({ name: pointer, unit: '' }),
      300,
    );
  expect(told(850, 0)).toContain(
    'The values used come to 850 GBP a year with now, below its range. Draws move vents one way only, ' +
      'because the value used is the least or the most that it may be. Go by the range.',
  );
  expect(told(1150, 5000)).toContain(
    'The values used come to 1150 GBP a year with now, above its range. What may cost more and what ' +
      'may cost less do not even out. Go by the range.',
  );
  expect(told(950, 0)).not.toContain('The values used');
});

test('plans whose values used lie on one side of their ranges are told in one clause', () => {
  const plan = (name: string, as_is: number) => ({
    ...{ ...doubt.plans[0]!, plan: name },
    money: { ...figure(900, 1000, 1100), as_is, matters: [] },
  });
  const plans = [plan('now', 850), plan('cool', 1200), plan('dry', 860)];
  const home = { currency: 'GBP', rooms: 2, hours: 8760 };
  const text = doubtText({ ...doubt, plans }, home, (name) => ({ name, unit: '' }), 300);
  expect(text).toContain(
    'The values used come to 850 GBP a year with now and 860 with dry, below their ranges; to 1200 GBP a year with cool, above its range. ',
  );
});
