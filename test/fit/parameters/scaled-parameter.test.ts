import { expect, test } from 'vitest';
import { settingsAt, valueAt } from '../../../src/fit/parameters/scaled-parameter.ts';
import type { Adjustable } from '../../../src/scenario/edits/adjustables.ts';

const one = (more: Partial<Adjustable>): Adjustable => ({
  ...{
    name: 'a',
    kind: 'U-value',
    unit: '',
    scale: 'positive',
    value: 10,
    low: 5,
    high: 20,
    source: 'test',
  },
  ...{ places: [{ path: '/a/b', at: (x) => x }], besides: [], least: 0.1, before: 1 },
  ...more,
});

test('low to high is a range of 95 %, by ratio for what is above 0', () => {
  expect(valueAt(one({}), 1.96)).toBeCloseTo(20, 10);
  expect(valueAt(one({}), -1.96)).toBeCloseTo(5, 10);
  expect(valueAt(one({}), 0)).toBeCloseTo(10, 10);
});

test('shares stay between 0 and 1, and what may be anything is straight', () => {
  const share = one({ scale: 'share', value: 0.25, low: 0, high: 0.6 });
  expect(valueAt(share, 4)).toBeLessThan(1);
  expect(valueAt(share, -4)).toBeGreaterThan(0);
  expect(valueAt(one({ scale: 'plain', value: 0, low: -2, high: 2 }), 0.98)).toBeCloseTo(1, 10);
});

test('a factor sets every place of it, after what has to be set besides', () => {
  const factor = one({
    ...{ value: 1, low: 0.5, high: 2, besides: ['/c={}'] },
    places: [
      { path: '/a/u', at: (x) => 1.6 * x },
      { path: '/a/v', at: (x) => 2.9 * x },
    ],
  });
  expect(settingsAt([factor], [0])).toEqual(['/c={}', '/a/u=1.6', '/a/v=2.9']);
});
