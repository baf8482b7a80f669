import { describe, expect, test } from 'vitest';
import { wallModes } from '../../../src/engine/layout/wall-modes.ts';
import { chainStep } from '../../reference/physics/heat/chain-step.ts';
import { randomNumbers } from '../random-home.ts';

const DT = 600;
const STEPS = 2000;

/** Conductances [W/K] and capacities [J/K] of a wall, drawn at random; its far end shut if adiabatic. */
function drawn(nodes: number, seed: number, adiabatic: boolean) {
  const random = randomNumbers(seed);
  const between = (low: number, high: number): number => low * (high / low) ** random();
  const conductance = Array.from({ length: nodes + 1 }, () => between(2, 200));
  if (adiabatic) conductance[nodes] = 0;
  return { conductance, capacity: Array.from({ length: nodes }, () => between(2e3, 5e6)), random };
}

describe.each([1, 2, 3, 5, 12])('a wall of %d nodes', (nodes) => {
  test.each([false, true])('steps in its modes as node by node; adiabatic: %s', (adiabatic) => {
    const { conductance, capacity, random } = drawn(nodes, nodes, adiabatic);
    const modes = wallModes(conductance, capacity, DT);
    let temperatures = capacity.map(() => 5 + 20 * random());
    let z = toModes(modes.perNode, temperatures);
    const heldBefore = dot(modes.stored, z);
    expect(heldBefore / dot(capacity, temperatures)).toBeCloseTo(1, 12);
    let passed = 0;
    let worst = 0;
    for (let s = 0; s < STEPS; s++) {
      const near = 20 + 5 * random();
      const far = -5 + 20 * random();
      const exact = chainStep(conductance, capacity, temperatures, near, far, DT);
      const first = dot(modes.atNear, z) + modes.nearToNear * near + modes.farToNear * far;
      const last = dot(modes.atFar, z) + modes.nearToFar * near + modes.farToFar * far;
      worst = Math.max(worst, Math.abs(first - exact.first), Math.abs(last - exact.last));
      passed += DT * (conductance[0]! * (near - first) + conductance[nodes]! * (far - last));
      z = z.map(
        (x, k) => modes.decay[k]! * x + modes.intoNear[k]! * near + modes.intoFar[k]! * far,
      );
      temperatures = [...exact.nodes];
    }
    expect(worst).toBeLessThan(1e-10);
    toModes(modes.perNode, temperatures).forEach((x, k) => {
      expect(Math.abs(z[k]! - x)).toBeLessThan(1e-10 * Math.sqrt(dot(capacity, capacity)));
    });
    const kept = dot(modes.stored, z) - heldBefore;
    expect(Math.abs(kept - passed)).toBeLessThan(1e-12 * STEPS * Math.abs(heldBefore));
  });
});

test('modes fade, and no node gets cooler than all that acts on it', () => {
  for (let seed = 1; seed <= 50; seed++) {
    const nodes = 1 + (seed % 6);
    const { conductance, capacity } = drawn(nodes, seed, false);
    for (const decay of wallModes(conductance, capacity, DT).decay) {
      expect(Math.abs(decay)).toBeLessThan(1);
    }
    for (let k = 0; k < nodes; k++) {
      const one = capacity.map((_, j) => (j === k ? 1 : 0));
      for (const t of chainStep(conductance, capacity, one, 0, 0, DT).nodes) {
        expect(t).toBeGreaterThanOrEqual(-1e-15);
      }
    }
  }
});

const dot = (a: ArrayLike<number>, b: ArrayLike<number>): number =>
  Array.from(a).reduce((sum, x, k) => sum + x * b[k]!, 0);

function toModes(perNode: Float64Array, nodes: readonly number[]): number[] {
  const n = nodes.length;
  return nodes.map((_, mode) => dot(perNode.subarray(mode * n, (mode + 1) * n), nodes));
}
