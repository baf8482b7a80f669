import { expect, test } from 'vitest';
import { implicitWeight } from '../../../src/engine/numerics/implicit-weight.ts';

const amplification = (z: number): number => {
  const w = implicitWeight(z);
  // m = (x0 + w z 0)/(1 + w z) relaxing to nil; x1 = x0 + (m - x0)/w
  const m = 1 / (1 + w * z);
  return 1 + (m - 1) / w;
};

test('a step is the (0,3) Padé approximation of exp(-z)', () => {
  for (const z of [1e-6, 0.01, 0.3, 1, 4, 50, 1e6]) {
    expect(amplification(z)).toBeCloseTo(1 / (1 + z + z ** 2 / 2 + z ** 3 / 6), 9);
  }
});

test('half for slow stores, whole for those without capacity', () => {
  expect(implicitWeight(0)).toBe(0.5);
  expect(implicitWeight(Number.POSITIVE_INFINITY)).toBe(1);
  expect(implicitWeight(1e13)).toBe(1);
});

test('never rings: the start fades without changing sign', () => {
  for (let z = 0; z < 100; z += 0.1) {
    expect(amplification(z)).toBeGreaterThan(0);
    expect(amplification(z)).toBeLessThanOrEqual(1);
  }
});
