/** Solve a x = b by Gaussian elimination without pivoting, for matrices whose diagonal leads. Overwrites a. */
export function solveDense(a: number[][], b: readonly number[]): number[] {
  const n = b.length;
  const x = [...b];
  for (let k = 0; k < n; k++) {
    for (let i = k + 1; i < n; i++) {
      const factor = a[i]![k]! / a[k]![k]!;
      if (factor === 0) continue;
      for (let j = k; j < n; j++) a[i]![j]! -= factor * a[k]![j]!;
      x[i]! -= factor * x[k]!;
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    for (let j = k + 1; j < n; j++) x[k]! -= a[k]![j]! * x[j]!;
    x[k]! /= a[k]![k]!;
  }
  return x;
}
