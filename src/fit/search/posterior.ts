import { CholeskyDecomposition, Matrix } from 'ml-matrix';

/** Covariance of parameters in units of their prior standard deviation. */
export interface Posterior {
  /** Standard deviation over that of the prior; 1 is what was known before. */
  readonly sd: readonly number[];
  readonly correlation: readonly (readonly number[])[];
}

/**
 * Posterior of a linear model with unit noise and a standard normal prior: the inverse of J'J + 1.
 *
 * @param columns  derivative of the weighted values by each parameter
 */
export function posteriorOf(columns: readonly Float64Array[]): Posterior {
  const covariance = inverse(information(columns));
  const sd = columns.map((_, i) => Math.sqrt(covariance.get(i, i)));
  const correlation = columns.map((_, i) =>
    columns.map((_, j) => (i === j ? 1 : covariance.get(i, j) / (sd[i]! * sd[j]!))),
  );
  return { sd, correlation };
}

/** J'J + w, with the prior's weight on the diagonal. */
export function information(columns: readonly Float64Array[], priorWeight = 1): Matrix {
  const n = columns.length;
  const sum = Matrix.eye(n, n, priorWeight);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      const value = dot(columns[i]!, columns[j]!) + (i === j ? priorWeight : 0);
      sum.set(i, j, value);
      sum.set(j, i, value);
    }
  }
  return sum;
}

/** Solution of a symmetric positive definite system. */
export function solveSymmetric(matrix: Matrix, right: readonly number[]): number[] {
  return new CholeskyDecomposition(matrix).solve(Matrix.columnVector([...right])).to1DArray();
}

const inverse = (matrix: Matrix): Matrix =>
  new CholeskyDecomposition(matrix).solve(Matrix.eye(matrix.rows, matrix.rows));

export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]!;
  return sum;
}
