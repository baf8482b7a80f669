import { expect, test } from 'vitest';
import { bridged } from '../../../src/fit/readings/bridged.ts';

test('a gap is crossed by a straight line; ends are held', () => {
  const gap = Number.NaN;
  expect([...bridged(Float64Array.of(gap, 2, gap, gap, 8, gap))]).toEqual([2, 2, 4, 6, 8, 8]);
});
