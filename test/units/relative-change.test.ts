import fc from 'fast-check';
import { expect, test } from 'vitest';
import { relativeChange } from '../../src/units/relative-change.ts';

test('doubling and halving are the same way, there and back', () => {
  expect(relativeChange(1000, 2000)).toBe(0.5);
  expect(relativeChange(2000, 1000)).toBe(-0.5);
  expect(relativeChange(0, 7)).toBe(1);
  expect(relativeChange(7, 0)).toBe(-1);
  expect(relativeChange(0, 0)).toBe(0);
});

test('there and back again weigh alike, and never more than all', () => {
  const level = fc.double({ min: 0, max: 1e5, noNaN: true });
  fc.assert(
    fc.property(level, level, (a, b) => {
      expect(relativeChange(a, b)).toBe(0 - relativeChange(b, a));
      expect(Math.abs(relativeChange(a, b))).toBeLessThanOrEqual(1);
    }),
  );
});
