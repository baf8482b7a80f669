import { expect, test } from 'vitest';
import { along } from '../../src/units/along.ts';

const CURVE = { outdoor: [-10, 0, 10], value: [2, 3, 5] };

test('a curve is straight between its points, and level beyond them', () => {
  for (const [outdoor, value] of [
    [-30, 2],
    [-10, 2],
    [-5, 2.5],
    [0, 3],
    [2.5, 3.5],
    [10, 5],
    [40, 5],
  ] as const) {
    expect(along(CURVE, outdoor)).toBe(value);
  }
});

test('a curve of one point is level', () => {
  expect([-99, 7, 99].map((x) => along({ outdoor: [7], value: [4] }, x))).toEqual([4, 4, 4]);
});
