import { expect, test } from 'vitest';
import { skyLoss } from '../../../src/physics/heat/sky-loss.ts';
import { uValue } from '../../reference/physics/heat/u-value.ts';
import { testRanges } from '../test-ranges.ts';

testRanges([
  ['skyLoss: tilt', [0, 180], '°', (x) => skyLoss(x)],
  ['uValue: resistance', [0, 1000], 'm2 K/W', (x) => uValue([0.13, x])],
]);

test('layers that add up to nothing or to more than any wall are refused', () => {
  const refusal = 'uValue: total resistance must be between 0.000001 and 10000 m2 K/W, got';
  expect(() => uValue([0, 0])).toThrow(`${refusal} 0 m2 K/W`);
  expect(() => uValue(Array(11).fill(1000))).toThrow(`${refusal} 11000 m2 K/W`);
  expect(uValue(Array(10).fill(1000))).toBe(1e-4);
});
