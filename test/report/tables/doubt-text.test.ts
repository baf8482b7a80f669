import { expect, test } from 'vitest';
import { doubtText } from '../../../src/report/tables/doubt-text.ts';
import type { SampledDoubt } from '../../../src/studies/doubts/sampled-doubt.ts';

const figure = (p10: number, median: number, p90: number) => ({
  ...{ as_is: median, p10, median, p90, matters: [] },
});
const doubt: SampledDoubt = {
  ...{ baseline: 'now', seed: 1, samples: 100, impossible: 0, years: 1, inputs: [] },
  ...{ left_aside: [], differences: [] },
  plans: [
    {
      plan: 'now',
      money: figure(900, 1000, 1100),
      damp: figure(1752, 4380, 8760),
      cold: figure(365, 730, 1095),
    },
  ],
};

test('hours of all rooms are told as a share of the time and as hours a day', () => {
  const home = { currency: 'GBP', rooms: 2, hours: 8760 };
  const text = doubtText(doubt, home, (pointer) => pointer, 80);
  // Two rooms have 17,520 hours a year, and a year 365 days.
  expect(text.replaceAll(/ +/g, ' ')).toContain(
    '[GBP] [% of the time] [h a day]\nnow 1000 (900 to 1100) 25 (10 to 50) 2.0 (1.0 to 3.0)',
  );
});
