import { implicitWeight } from '../numerics/implicit-weight.ts';
import { symmetricEigen } from '../numerics/symmetric-eigen.ts';

/**
 * One step of a wall's RC network in its own modes: each mode decays by itself, so that a step
 * needs neither a sweep through the nodes nor a division.
 *
 * With the ends at mean temperatures `near` and `far` over the step, and z the modes at its start:
 *
 *     mean of the first node = sum of atNear z + nearToNear near + farToNear far
 *     mean of the last node  = sum of atFar z + nearToFar near + farToFar far
 *     z at the end           = decay z + intoNear near + intoFar far        (mode by mode)
 *
 * Exactly the step of the nodes with the implicit weight of each (see implicit-weight.ts): the step's
 * matrix is similar to a symmetric one, whose eigenvectors are the modes.
 */
export interface WallModes {
  readonly decay: Float64Array;
  readonly intoNear: Float64Array;
  readonly intoFar: Float64Array;
  readonly atNear: Float64Array;
  readonly atFar: Float64Array;
  /** Heat stored by one unit of each mode. [J] */
  readonly stored: Float64Array;
  /** What each node's kelvin adds to each mode, `[mode * nodes + node]`. */
  readonly perNode: Float64Array;
  readonly nearToNear: number;
  readonly nearToFar: number;
  readonly farToNear: number;
  readonly farToFar: number;
}

/**
 * The modes of a chain of nodes.
 *
 * @param conductance  [W/K] near end to first node, between nodes, last node to far end (0 for adiabatic)
 * @param capacity     of each node [J/K]
 * @param dt           control step [s]
 */
export function wallModes(
  conductance: readonly number[],
  capacity: readonly number[],
  dt: number,
): WallModes {
  const n = capacity.length;
  const storage = capacity.map((c, k) => {
    const weight = implicitWeight(((conductance[k]! + conductance[k + 1]!) * dt) / c);
    return c / (weight * dt);
  });
  const inverse = inverseOf(conductance, storage);
  // The nodes' step is similar to I - dt M with M symmetric: (D - D B D)ij / sqrt(Ci Cj), where D is
  // their storage and B the inverse.
  const symmetric = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const own = i === j ? storage[i]! : 0;
      const s = own - storage[i]! * inverse[i * n + j]! * storage[j]!;
      symmetric[i * n + j] = s / Math.sqrt(capacity[i]! * capacity[j]!);
    }
  }
  const { values, vectors } = symmetricEigen(symmetric, n);
  const first = conductance[0]!;
  const last = conductance[n]!;
  const root = Float64Array.from(capacity, Math.sqrt);
  const into = { near: new Float64Array(n), far: new Float64Array(n) };
  const at = { near: new Float64Array(n), far: new Float64Array(n) };
  for (let i = 0; i < n; i++) {
    into.near[i] = (dt * storage[i]! * inverse[i * n]! * first) / root[i]!;
    into.far[i] = (dt * storage[i]! * inverse[i * n + n - 1]! * last) / root[i]!;
    at.near[i] = (inverse[i]! * storage[i]!) / root[i]!;
    at.far[i] = (inverse[(n - 1) * n + i]! * storage[i]!) / root[i]!;
  }
  return {
    decay: values.map((value) => 1 - dt * value),
    intoNear: alongModes(vectors, into.near),
    intoFar: alongModes(vectors, into.far),
    atNear: alongModes(vectors, at.near),
    atFar: alongModes(vectors, at.far),
    stored: alongModes(vectors, root),
    perNode: Float64Array.from({ length: n * n }, (_, k) => {
      const node = k % n;
      return vectors[node * n + (k - node) / n]! * root[node]!;
    }),
    nearToNear: inverse[0]! * first,
    nearToFar: inverse[(n - 1) * n]! * first,
    farToNear: inverse[n - 1]! * last,
    farToFar: inverse[n * n - 1]! * last,
  };
}

/** Of each mode, the sum over the nodes of its vector times theirs. */
function alongModes(vectors: Float64Array, ofNode: Float64Array): Float64Array {
  const n = ofNode.length;
  const sums = new Float64Array(n);
  for (let mode = 0; mode < n; mode++) {
    let sum = 0;
    for (let i = 0; i < n; i++) sum += vectors[i * n + mode]! * ofNode[i]!;
    sums[mode] = sum;
  }
  return sums;
}

/** Inverse of the tridiagonal matrix of storage and conductances, row by row. */
function inverseOf(conductance: readonly number[], storage: readonly number[]): Float64Array {
  const n = storage.length;
  const pivot = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    pivot[k] = storage[k]! + conductance[k]! + conductance[k + 1]!;
    if (k > 0) pivot[k] = pivot[k]! - (conductance[k]! * conductance[k]!) / pivot[k - 1]!;
  }
  const inverse = new Float64Array(n * n);
  for (let column = 0; column < n; column++) {
    const x = new Float64Array(n);
    for (let k = 0; k < n; k++) {
      const pushed = k > 0 ? conductance[k]! * x[k - 1]! : 0;
      x[k] = ((k === column ? 1 : 0) + pushed) / pivot[k]!;
    }
    for (let k = n - 2; k >= 0; k--) x[k] = x[k]! + (conductance[k + 1]! * x[k + 1]!) / pivot[k]!;
    for (let k = 0; k < n; k++) inverse[k * n + column] = x[k]!;
  }
  return inverse;
}
