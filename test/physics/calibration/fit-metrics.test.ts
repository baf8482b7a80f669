import { describe, expect, test } from 'vitest';
import { compare } from '../../reference/compare.ts';
import {
  cvRmse,
  meanAbsoluteError,
  nmbe,
  rootMeanSquareError,
} from '../../reference/physics/calibration/fit-metrics.ts';

const MEASURED = [10, 12, 8, 10];
const MODELLED = [11, 12, 9, 10];

test.each([
  ['NMBE, divided by n', 5.0, () => nmbe(MEASURED, MODELLED, 0)],
  ['NMBE, divided by n - 1', 6.67, () => nmbe(MEASURED, MODELLED)],
  ['CV(RMSE), divided by n', 7.07, () => cvRmse(MEASURED, MODELLED, 0)],
  ['CV(RMSE), divided by n - 1', 8.16, () => cvRmse(MEASURED, MODELLED)],
])('%s', (what, expected, got) => {
  compare({
    topic: 'Calibration',
    what: `${what}, of 10 12 8 10 modelled as 11 12 9 10`,
    unit: '%',
    source: 'ASHRAE Guideline 14, worked by hand',
    mark: 'closed form',
    expected,
    got: got(),
    tolerance: { absolute: 0.005 },
    because: 'half the last digit printed',
  });
});

describe('fit metrics', () => {
  test('too much is positive, too little negative', () => {
    expect(nmbe([10, 10], [11, 11], 0)).toBeCloseTo(10, 12);
    expect(nmbe([10, 10], [9, 9], 0)).toBeCloseTo(-10, 12);
  });

  test('a perfect model has none, a shifted one no scatter beyond its shift', () => {
    expect(nmbe(MEASURED, MEASURED)).toBe(0);
    expect(cvRmse(MEASURED, MEASURED)).toBe(0);
    expect(rootMeanSquareError([1, 2, 3], [3, 4, 5])).toBe(2);
    expect(meanAbsoluteError([1, 2, 3], [3, 0, 5])).toBe(2);
  });

  test('the unit does not matter', () => {
    const inWatts = (series: number[]): number[] => series.map((x) => 1000 * x);
    expect(cvRmse(inWatts(MEASURED), inWatts(MODELLED))).toBeCloseTo(
      cvRmse(MEASURED, MODELLED),
      10,
    );
  });

  test('scatter is never less than bias', () => {
    expect(cvRmse(MEASURED, MODELLED, 0)).toBeGreaterThan(nmbe(MEASURED, MODELLED, 0));
    expect(rootMeanSquareError(MEASURED, MODELLED)).toBeGreaterThanOrEqual(
      meanAbsoluteError(MEASURED, MODELLED),
    );
  });

  test('refuses series that cannot be compared, in words', () => {
    expect(() => nmbe([1, 2], [1])).toThrow(
      'nmbe: needs as many modelled as measured, got 1 and 2',
    );
    expect(() => cvRmse([1], [1])).toThrow('cvRmse: needs more than 1 readings, got 1');
    expect(() => rootMeanSquareError([], [])).toThrow(RangeError);
    expect(() => meanAbsoluteError([1, Number.NaN], [1, 2])).toThrow(
      'meanAbsoluteError: needs numbers, got measured NaN and modelled 2 at place 2',
    );
    expect(() => nmbe([-1, 1], [0, 0])).toThrow(
      'nmbe: the measured mean is 0, so nothing can be its share',
    );
    expect(() => nmbe([1, 2], [1, 2], Number.NaN)).toThrow(RangeError);
    expect(() => nmbe([1, 2], [1, 2], -1)).toThrow(RangeError);
  });
});
