import { expect, test } from 'vitest';
import { roundDomain } from '../../../src/report/charts/round-domain.ts';

// Steps are the next of 1, 2, 5 times a power of ten above a fifth of the span; by hand.
test.each([
  [
    [17.3, 21.9],
    [17, 22],
  ],
  [
    [412, 2380],
    [0, 2500],
  ],
  [
    [0.013, 0.021],
    [0.012, 0.022],
  ],
  [
    [5, 5],
    [5, 6],
  ],
  [
    [-3.2, 4],
    [-4, 4],
  ],
  [[], [0, 1]],
])('%j', (values, ends) => {
  const found = roundDomain(values);
  expect(found[0]).toBeCloseTo(ends[0]!, 9);
  expect(found[1]).toBeCloseTo(ends[1]!, 9);
});
