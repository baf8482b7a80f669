import type { i32 } from '../../units/portable.ts';

/**
 * Direct solution of small sparse systems whose pattern never changes, without pivoting.
 *
 * Meant for M-matrices (positive diagonal, the rest not positive, diagonally dominant), for which
 * elimination in any order is stable. The order is given or chosen once by least degree, which gives no
 * fill at all for a tree of doorways; the elimination then runs as a fixed list of positions.
 */
export interface Elimination {
  readonly n: i32;
  /** Number of stored values, fill included. */
  readonly size: i32;
  /** Position of a value by row * n + column; fill has positions too. */
  readonly positions: ReadonlyMap<number, number>;
  /** Position of each row's diagonal value. */
  readonly diagonal: Int32Array;
  /** Rows in order of elimination. */
  readonly order: Int32Array;
  /** For the p-th pivot: its later neighbours, `[start[p], start[p + 1])`. */
  readonly start: Int32Array;
  readonly neighbour: Int32Array;
  /** Position of (neighbour, pivot). */
  readonly lower: Int32Array;
  /** Position of (pivot, neighbour). */
  readonly upper: Int32Array;
  /** Every value of a row: `[rowStart[i], rowStart[i + 1])` gives its position and column. */
  readonly rowStart: Int32Array;
  readonly rowPosition: Int32Array;
  readonly rowColumn: Int32Array;
  /** Where each product of a lower and an upper value is taken off, in the order they are met. */
  readonly target: Int32Array;
}

/**
 * Choose the order and lay out the values.
 *
 * @param n      number of unknowns
 * @param pairs  pairs of unknowns that see each other; order and repetition do not matter
 * @param given  order of elimination; absent is by least degree
 */
export function planElimination(
  n: number,
  pairs: readonly (readonly [number, number])[],
  given?: readonly number[],
): Elimination {
  const around = Array.from({ length: n }, () => new Set<number>());
  for (const [i, j] of pairs) {
    if (i === j) continue;
    around[i]!.add(j);
    around[j]!.add(i);
  }
  const positions = new Map<number, number>();
  const place = (i: number, j: number): number => {
    const key = i * n + j;
    const known = positions.get(key);
    if (known !== undefined) return known;
    positions.set(key, positions.size);
    return positions.size - 1;
  };
  for (let i = 0; i < n; i++) place(i, i);

  const left = new Set(around.keys());
  const order: number[] = [];
  const start = [0];
  const neighbour: number[] = [];
  const lower: number[] = [];
  const upper: number[] = [];
  const target: number[] = [];
  while (left.size > 0) {
    const pivot = given?.[order.length] ?? leastDegree(left, around);
    const later = [...around[pivot]!].sort((a, b) => a - b);
    order.push(pivot);
    left.delete(pivot);
    for (const i of later) {
      neighbour.push(i);
      lower.push(place(i, pivot));
      upper.push(place(pivot, i));
    }
    start.push(neighbour.length);
    for (const i of later) {
      for (const j of later) {
        target.push(place(i, j));
        if (i !== j) around[i]!.add(j); // fill
      }
      around[i]!.delete(pivot);
    }
  }
  const rows = Array.from({ length: n }, (): [number, number][] => []);
  for (const value of positions) rows[Math.floor(value[0] / n)]!.push(value);
  const rowStart = new Int32Array(n + 1);
  rows.forEach((row, i) => {
    rowStart[i + 1] = rowStart[i]! + row.length;
  });
  return {
    n,
    size: positions.size,
    positions,
    diagonal: Int32Array.from({ length: n }, (_, i) => positions.get(i * n + i)!),
    order: Int32Array.from(order),
    start: Int32Array.from(start),
    neighbour: Int32Array.from(neighbour),
    lower: Int32Array.from(lower),
    upper: Int32Array.from(upper),
    rowStart,
    rowPosition: Int32Array.from(rows.flat(), ([, position]) => position),
    rowColumn: Int32Array.from(rows.flat(), ([key]) => key % n),
    target: Int32Array.from(target),
  };
}

/**
 * Solve a x = b. Overwrites a and b.
 *
 * @param a  values by position
 * @param b  right-hand side by row
 * @param x  receives the solution by row
 */
export function solveSparse(
  plan: Elimination,
  a: Float64Array,
  b: Float64Array,
  x: Float64Array,
): void {
  const { n, order, diagonal, start, neighbour, lower, upper, target } = plan;
  let t = 0;
  for (let p = 0; p < n; p++) {
    const pivot = order[p]!;
    const first = start[p]!;
    const end = start[p + 1]!;
    if (first === end) continue;
    const inverse = 1 / a[diagonal[pivot]!]!;
    const rhs = b[pivot]!;
    for (let i = first; i < end; i++) {
      const factor = a[lower[i]!]! * inverse;
      if (factor === 0) {
        t += end - first;
        continue;
      }
      for (let j = first; j < end; j++) {
        const k = target[t++]!;
        a[k] = a[k]! - factor * a[upper[j]!]!;
      }
      const row = neighbour[i]!;
      b[row] = b[row]! - factor * rhs;
    }
  }
  for (let p = n - 1; p >= 0; p--) {
    const pivot = order[p]!;
    let sum = b[pivot]!;
    for (let j = start[p]!; j < start[p + 1]!; j++) sum -= a[upper[j]!]! * x[neighbour[j]!]!;
    x[pivot] = sum / a[diagonal[pivot]!]!;
  }
}

/** Where the value of row i and column j is kept. @throws RangeError where the pattern has none */
export function positionOf({ n, positions }: Elimination, i: number, j: number): number {
  const position = positions.get(i * n + j);
  if (position === undefined) throw new RangeError(`positionOf: no value at row ${i}, column ${j}`);
  return position;
}

function leastDegree(left: ReadonlySet<number>, around: readonly ReadonlySet<number>[]): number {
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const i of left) {
    const degree = around[i]!.size;
    if (degree < least) {
      best = i;
      least = degree;
    }
  }
  return best;
}
