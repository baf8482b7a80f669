import { expect, test } from 'vitest';
import { spreadOf } from '../../../src/fit/stage/spread.ts';

test('quarters that agree have no spread; quarters that differ, that of their steps', () => {
  // one parameter, derivative 1 everywhere; quarters of two hours with residuals of 3, 1, -1, -3
  const columns = [new Float64Array(8).fill(1)];
  expect(spreadOf(columns, new Float64Array(8).fill(0), [0], 1)).toEqual([0]);
  const residuals = Float64Array.of(3, 3, 1, 1, -1, -1, -3, -3);
  // each step is 2 r over 2.25; standard deviation of 3, 1, -1, -3 is sqrt(20/3); over sqrt(4)
  const expected = (2 / 2.25) * (Math.sqrt(20 / 3) / 2);
  expect(spreadOf(columns, residuals, [0], 1)[0]).toBeCloseTo(expected, 12);
});
