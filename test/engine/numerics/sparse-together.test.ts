import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type Elimination,
  planElimination,
  solveSparse,
} from '../../../src/engine/numerics/sparse.ts';
import { solveSparseTogether } from '../../../src/engine/numerics/sparse-together.ts';

const MATRIX_OF = Int32Array.of(0, 1, 0, 2);
const MATRICES = 3;
const COUNT = MATRIX_OF.length;

/** Flows between pairs of rooms, and a loss of each that differs between the matrices. */
function matrices(plan: Elimination, pairs: [number, number][], numbers: () => number) {
  const a = Array.from({ length: MATRICES }, () => new Float64Array(plan.size));
  for (const [i, j] of pairs) {
    if (i === j) continue;
    const flow = numbers();
    for (const one of a) {
      one[plan.positions.get(i * plan.n + j)!]! -= flow;
      one[plan.diagonal[i]!]! += flow;
    }
  }
  for (const one of a) for (const k of plan.diagonal) one[k]! += numbers();
  return a;
}

test('several right-hand sides come out as each does alone', () => {
  const pattern = fc.integer({ min: 1, max: 12 }).chain((n) =>
    fc.record({
      n: fc.constant(n),
      pairs: fc.array(fc.tuple(fc.nat(n - 1), fc.nat(n - 1)), { maxLength: 25 }),
      numbers: fc.infiniteStream(fc.double({ min: 1e-3, max: 10, noNaN: true })),
    }),
  );
  fc.assert(
    fc.property(pattern, ({ n, pairs, numbers }) => {
      const next = (): number => numbers.next().value;
      const plan = planElimination(n, pairs);
      const a = matrices(plan, pairs, next);
      const b = Float64Array.from({ length: n * COUNT }, next);
      const together = new Float64Array(n * COUNT);
      const sideBySide = Float64Array.from(
        { length: plan.size * MATRICES },
        (_, k) => a[k % MATRICES]![Math.floor(k / MATRICES)]!,
      );
      const scratch = new Float64Array(MATRICES);
      solveSparseTogether(
        plan,
        sideBySide,
        MATRIX_OF,
        scratch,
        MATRICES,
        COUNT,
        b.slice(),
        together,
      );
      for (let s = 0; s < COUNT; s++) {
        const alone = new Float64Array(n);
        const side = Float64Array.from({ length: n }, (_, i) => b[i * COUNT + s]!);
        solveSparse(plan, a[MATRIX_OF[s]!]!.slice(), side, alone);
        // One division in place of a product with an inverse: rounding.
        alone.forEach((x, i) => {
          expect(Math.abs(together[i * COUNT + s]! - x)).toBeLessThanOrEqual(1e-12 * Math.abs(x));
        });
      }
    }),
    { numRuns: 200, seed: 5 },
  );
});
