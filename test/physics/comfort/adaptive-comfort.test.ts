import { expect, test } from 'vitest';
import { compare } from '../../reference/compare.ts';
import {
  adaptiveComfort,
  runningMeanOutdoor,
} from '../../reference/physics/comfort/adaptive-comfort.ts';

test.each([
  ['I', 22.4, 27.4],
  ['II', 21.4, 28.4],
  ['III', 20.4, 29.4],
] as const)('category %s after a fortnight of 20 °C', (category, low, high) => {
  const row = {
    topic: 'Comfort',
    unit: '°C',
    source:
      'EN 16798-1:2019, annex B, by way of a public validation set for comfort models (ts_adaptive_en.json)',
    mark: 'published',
    tolerance: { absolute: 1e-9 },
    because: 'at 20 °C the formula comes to the tenths that are printed',
  } as const;
  const got = adaptiveComfort(20, category);
  compare({
    ...row,
    what: `lowest, category ${category}, running mean 20 °C`,
    expected: low,
    got: got.low,
  });
  compare({
    ...row,
    what: `highest, category ${category}, running mean 20 °C`,
    expected: high,
    got: got.high,
  });
});

test('the running mean settles at steady weather and forgets a day by a fifth', () => {
  expect(runningMeanOutdoor(14, 14)).toBeCloseTo(14, 12);
  expect(runningMeanOutdoor(10, 20)).toBeCloseTo(12, 12);
});

test('no promise in the cold season', () => {
  expect(() => adaptiveComfort(5, 'II')).toThrow(
    'adaptiveComfort: running mean must be between 10 and 30 °C, got 5 °C',
  );
  expect(() => runningMeanOutdoor(10, 10, 1.1)).toThrow(RangeError);
});
