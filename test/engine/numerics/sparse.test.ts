import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planElimination, positionOf, solveSparse } from '../../../src/engine/numerics/sparse.ts';

/** A diagonally dominant matrix on a pattern, solved and multiplied back. */
function residualOf(n: number, pairs: [number, number][], numbers: () => number): number {
  const plan = planElimination(n, pairs);
  const a = new Float64Array(plan.size);
  const dense = Array.from({ length: n }, () => new Float64Array(n));
  for (const [i, j] of pairs) {
    if (i === j) continue;
    for (const [p, q] of [
      [i, j],
      [j, i],
    ] as const) {
      const g = numbers();
      dense[p]![q]! -= g;
      dense[p]![p]! += g;
    }
  }
  for (let i = 0; i < n; i++) dense[i]![i]! += 0.1 + numbers();
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) if (dense[i]![j] !== 0) a[positionOf(plan, i, j)] = dense[i]![j]!;
  }
  const b = Float64Array.from({ length: n }, numbers);
  const x = new Float64Array(n);
  solveSparse(plan, a, b.slice(), x);
  return Math.max(
    ...dense.map((row, i) => Math.abs(row.reduce((sum, v, j) => sum + v * x[j]!, 0) - b[i]!)),
  );
}

test('the solution satisfies every equation, whatever the pattern', () => {
  const pattern = fc.integer({ min: 1, max: 25 }).chain((n) =>
    fc.record({
      n: fc.constant(n),
      pairs: fc.array(fc.tuple(fc.nat(n - 1), fc.nat(n - 1)), { maxLength: 60 }),
      numbers: fc.infiniteStream(fc.double({ min: 1e-3, max: 10, noNaN: true })),
    }),
  );
  fc.assert(
    fc.property(pattern, ({ n, pairs, numbers }) => {
      expect(residualOf(n, pairs, () => numbers.next().value)).toBeLessThan(1e-10);
    }),
    { numRuns: 200, seed: 11 },
  );
});

test('a tree of doors gives no fill', () => {
  const pairs = Array.from({ length: 49 }, (_, i): [number, number] => [i + 1, Math.floor(i / 3)]);
  expect(planElimination(50, pairs).size).toBe(50 + 2 * 49);
});

test('a ring gives the least fill there can be', () => {
  const pairs = Array.from({ length: 10 }, (_, i): [number, number] => [i, (i + 1) % 10]);
  expect(planElimination(10, pairs).size).toBe(10 + 2 * (10 + 7));
});

test('asking for a place that the pattern has not is an error', () => {
  const plan = planElimination(3, [[0, 1]]);
  expect(() => positionOf(plan, 0, 2)).toThrow('positionOf: no value at row 0, column 2');
});
