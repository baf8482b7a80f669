import { expect, test } from 'vitest';
import { compare } from '../../reference/compare.ts';
import { longTermComfort } from '../../reference/physics/comfort/long-term-comfort.ts';

test('four hours against 20 to 26 °C', () => {
  const got = longTermComfort([19, 18.5, 21, 27], 20, 26);
  const row = {
    topic: 'Comfort',
    source: 'ISO 7730, annex H, methods A and B',
    mark: 'closed form',
    tolerance: { absolute: 1e-12 },
    because: 'four numbers',
  } as const;
  compare({
    ...row,
    what: 'method A, share outside',
    unit: '-',
    expected: 0.75,
    got: got.shareOutside,
  });
  compare({
    ...row,
    what: 'method B, cold',
    unit: 'K h',
    expected: 2.5,
    got: got.degreeHoursBelow,
  });
  compare({
    ...row,
    what: 'method B, warm',
    unit: 'K h',
    expected: 1,
    got: got.degreeHoursAbove,
  });
});

test('limits belong inside, and the step weighs', () => {
  expect(longTermComfort([20, 26], 20, 26)).toEqual({
    shareOutside: 0,
    degreeHoursBelow: 0,
    degreeHoursAbove: 0,
  });
  expect(longTermComfort([19, 28], 20, 26, 0.25)).toEqual({
    shareOutside: 1,
    degreeHoursBelow: 0.25,
    degreeHoursAbove: 0.5,
  });
});

test('nothing to judge, a hole in the series and a range upside down are refused', () => {
  expect(() => longTermComfort([], 20, 26)).toThrow(
    'longTermComfort: number of temperatures must be between 1 and 1000000000, got 0',
  );
  expect(() => longTermComfort([20, Number.NaN], 20, 26)).toThrow(RangeError);
  expect(() => longTermComfort([20], 26, 20)).toThrow(
    'longTermComfort: high must be between 26 and 200 °C, got 20 °C',
  );
});
