import type { i32 } from '../../units/portable.ts';
import type { Elimination } from './sparse.ts';

/**
 * Solve a x = b for several right-hand sides in one pass over the structure, where some share a
 * matrix. Overwrites a and b.
 *
 * The matrices may differ in their values but not in where an off-diagonal value is 0: flows of air
 * with several losses on the diagonal. Values lie side by side, `[position * matrices + matrix]` in a
 * and `[row * count + side]` in b and x.
 *
 * @param matrixOf  matrix of each right-hand side
 * @param factor    scratch, one number a matrix
 * @param matrices  how many matrices there are, and right-hand sides in `count`
 */
export function solveSparseTogether(
  plan: Elimination,
  a: Float64Array,
  matrixOf: Int32Array,
  factor: Float64Array,
  matrices: i32,
  count: i32,
  b: Float64Array,
  x: Float64Array,
): void {
  const { n, order, diagonal, start, neighbour, lower, upper, target } = plan;
  let t = 0;
  for (let p = 0; p < n; p++) {
    const pivot = order[p]!;
    const own = diagonal[pivot]! * matrices;
    const first = start[p]!;
    const end = start[p + 1]!;
    for (let i = first; i < end; i++) {
      const low = lower[i]! * matrices;
      if (a[low] === 0) {
        t += end - first;
        continue;
      }
      for (let g = 0; g < matrices; g++) factor[g] = a[low + g]! / a[own + g]!;
      for (let j = first; j < end; j++) {
        const k = target[t++]! * matrices;
        const up = upper[j]! * matrices;
        for (let g = 0; g < matrices; g++) a[k + g] = a[k + g]! - factor[g]! * a[up + g]!;
      }
      const from = pivot * count;
      const to = neighbour[i]! * count;
      for (let s = 0; s < count; s++) {
        b[to + s] = b[to + s]! - factor[matrixOf[s]!]! * b[from + s]!;
      }
    }
  }
  for (let p = n - 1; p >= 0; p--) {
    const pivot = order[p]!;
    const own = diagonal[pivot]! * matrices;
    const first = start[p]!;
    const end = start[p + 1]!;
    for (let s = 0; s < count; s++) {
      const g = matrixOf[s]!;
      let sum = b[pivot * count + s]!;
      for (let j = first; j < end; j++) {
        sum -= a[upper[j]! * matrices + g]! * x[neighbour[j]! * count + s]!;
      }
      x[pivot * count + s] = sum / a[own + g]!;
    }
  }
}
