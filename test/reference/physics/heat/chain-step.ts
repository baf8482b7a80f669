import { Matrix, solve } from 'ml-matrix';
import { implicitWeight } from '../../../../src/engine/numerics/implicit-weight.ts';

/** What a chain of nodes is after a step, and the means of its first and last node over it. [°C] */
export interface ChainStep {
  readonly nodes: readonly number[];
  readonly first: number;
  readonly last: number;
}

/**
 * One step of a chain of resistances and capacities, solved node by node as one dense linear system of
 * their means, each with its own implicit weight.
 *
 * @param conductance  near end to first node, between nodes, last node to far end [W/K]
 * @param capacity     of each node [J/K]
 * @param nodes        at the start [°C]
 * @param near, far    ends, mean over the step [°C]
 */
export function chainStep(
  conductance: readonly number[],
  capacity: readonly number[],
  nodes: readonly number[],
  near: number,
  far: number,
  dt: number,
): ChainStep {
  const n = nodes.length;
  const weight = capacity.map((c, k) =>
    implicitWeight(((conductance[k]! + conductance[k + 1]!) * dt) / c),
  );
  const a = Matrix.zeros(n, n);
  const b = Matrix.zeros(n, 1);
  for (let k = 0; k < n; k++) {
    const storage = capacity[k]! / (weight[k]! * dt);
    a.set(k, k, storage + conductance[k]! + conductance[k + 1]!);
    if (k > 0) a.set(k, k - 1, -conductance[k]!);
    if (k < n - 1) a.set(k, k + 1, -conductance[k + 1]!);
    const fromNear = k === 0 ? conductance[0]! * near : 0;
    const fromFar = k === n - 1 ? conductance[n]! * far : 0;
    b.set(k, 0, storage * nodes[k]! + fromNear + fromFar);
  }
  const mean = solve(a, b).to1DArray();
  return {
    nodes: nodes.map((x, k) => x + (mean[k]! - x) / weight[k]!),
    first: mean[0]!,
    last: mean[n - 1]!,
  };
}
