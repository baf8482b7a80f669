/**
 * Eigenvalues and orthonormal eigenvectors of a small symmetric matrix, by cyclic Jacobi rotations.
 *
 * Meant for up to a few dozen rows, once a run; accurate to rounding however close the eigenvalues.
 *
 * @param matrix  row by row, n times n; only its symmetric part counts
 * @returns values in no particular order, and vectors with the k-th eigenvector in column k
 * Source: Golub and Van Loan, Matrix Computations, "Jacobi methods" (from memory).
 */
export function symmetricEigen(matrix: Float64Array, n: number): SymmetricEigen {
  const a = new Float64Array(n * n);
  const vectors = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) a[i * n + j] = 0.5 * (matrix[i * n + j]! + matrix[j * n + i]!);
    vectors[i * n + i] = 1;
  }
  for (let sweep = 0; sweep < SWEEPS && offDiagonal(a, n) > 0; sweep++) {
    for (let p = 0; p < n - 1; p++) {
      for (let q = p + 1; q < n; q++) rotate(a, vectors, n, p, q);
    }
  }
  return { values: Float64Array.from({ length: n }, (_, k) => a[k * n + k]!), vectors };
}

export interface SymmetricEigen {
  readonly values: Float64Array;
  readonly vectors: Float64Array;
}

/** Sum of squares beside the diagonal, as a share of the whole; 0 where only rounding is left. */
function offDiagonal(a: Float64Array, n: number): number {
  let off = 0;
  let all = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const square = a[i * n + j]! * a[i * n + j]!;
      all += square;
      if (i !== j) off += square;
    }
  }
  return off > ROUNDING * all ? off : 0;
}

/** Turn rows and columns p and q so that their common entry vanishes. */
function rotate(a: Float64Array, vectors: Float64Array, n: number, p: number, q: number): void {
  const common = a[p * n + q]!;
  if (common === 0) return;
  const theta = (a[q * n + q]! - a[p * n + p]!) / (2 * common);
  const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(theta, 1));
  const c = 1 / Math.hypot(t, 1);
  const s = t * c;
  turn(a, n, 1, p, q, c, s);
  turn(a, 1, n, p * n, q * n, c, s);
  turn(vectors, n, 1, p, q, c, s);
}

/** Turn two lines of n numbers that begin at p and q and lie `along` apart. */
function turn(
  a: Float64Array,
  along: number,
  across: number,
  p: number,
  q: number,
  c: number,
  s: number,
): void {
  const n = Math.max(along, across);
  for (let k = 0; k < n; k++) {
    const x = a[p + k * along]!;
    const y = a[q + k * along]!;
    a[p + k * along] = c * x - s * y;
    a[q + k * along] = s * x + c * y;
  }
}

const SWEEPS = 50;
const ROUNDING = 1e-34; // of squares
