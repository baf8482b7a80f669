import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { expect, test } from 'vitest';
import { symmetricEigen } from '../../../src/engine/numerics/symmetric-eigen.ts';
import { randomNumbers } from '../random-home.ts';

/** A symmetric matrix of random numbers, with entries of very different size. */
function drawn(n: number, seed: number): Matrix {
  const random = randomNumbers(seed);
  const a = Matrix.from1DArray(
    n,
    n,
    Array.from({ length: n * n }, () => 10 ** (4 * random() - 2)),
  );
  return Matrix.add(a, a.transpose());
}

test.each([1, 2, 3, 5, 12])('eigenvalues of %d rows are those of the package ml-matrix', (n) => {
  for (let seed = 1; seed <= 5; seed++) {
    const a = drawn(n, seed);
    const { values } = symmetricEigen(Float64Array.from(a.to1DArray()), n);
    const expected = new EigenvalueDecomposition(a, { assumeSymmetric: true }).realEigenvalues;
    const largest = Math.max(...expected.map(Math.abs));
    const [ours, theirs] = [[...values], expected].map((list) => list.sort((x, y) => x - y));
    ours!.forEach((value, k) => {
      expect(Math.abs(value - theirs![k]!)).toBeLessThan(1e-13 * largest);
    });
  }
});

test('vectors are orthonormal and make the matrix again', () => {
  const n = 7;
  const a = drawn(n, 3);
  const { values, vectors } = symmetricEigen(Float64Array.from(a.to1DArray()), n);
  const v = Matrix.from1DArray(n, n, [...vectors]);
  const off = Matrix.sub(v.transpose().mmul(v), Matrix.eye(n));
  expect(off.norm('max')).toBeLessThan(1e-14);
  const again = v.mmul(Matrix.diag([...values])).mmul(v.transpose());
  expect(Matrix.sub(again, a).norm('max')).toBeLessThan(1e-13 * a.norm('max'));
});

test('a matrix of equal eigenvalues stays as it is', () => {
  const { values, vectors } = symmetricEigen(Float64Array.of(2, 0, 0, 2), 2);
  expect([...values]).toEqual([2, 2]);
  expect([...vectors]).toEqual([1, 0, 0, 1]);
});
