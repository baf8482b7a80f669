import type { Layer } from '../physics/heat/layer.ts';
import {
  type PeriodicTransfer,
  periodicTransfer,
  periodicTransferOfChain,
} from '../physics/heat/periodic-transfer.ts';
import { SECONDS_PER_DAY } from '../units/time-units.ts';
import type { Chain } from './home.ts';

/** A slice of an element: what it resists [m2 K/W] and what it stores [J/(m2 K)]. */
export interface Cell {
  readonly resistance: number;
  readonly capacity: number;
}

interface Faces {
  readonly inner: number;
  readonly outer: number;
  readonly bothFaces?: boolean;
}

/**
 * Between which slices to put nodes so that few of them answer a daily swing well enough.
 *
 * Adds the node that helps most, then lets each node move where it helps more, until the worst
 * error is within its limit. Where none of up to twelve are enough, the fewest that come near the
 * best. Returned are the slice borders that carry a node, both faces included.
 */
export function fewestNodes(
  cells: readonly Cell[],
  layers: readonly Layer[],
  faces: Faces,
): readonly number[] {
  const exact = periodicTransfer(layers, SECONDS_PER_DAY, faces);
  const steady = 1 / lump(cells, [0, cells.length], faces).resistance.reduce((s, r) => s + r, 0);
  const badness = (nodes: readonly number[]): number => {
    const chain = lump(cells, nodes, faces);
    const got = periodicTransferOfChain(chain.resistance, chain.capacity, SECONDS_PER_DAY);
    return worstError(got, exact, steady, faces.bothFaces === true);
  };
  let nodes: readonly number[] = [0, cells.length];
  const tried = [{ nodes, bad: badness(nodes) }];
  while (tried.at(-1)!.bad > 1 && nodes.length < MOST_NODES && nodes.length <= cells.length) {
    nodes = best(candidates(nodes, null, cells.length), badness);
    for (let sweep = 0; sweep < SWEEPS; sweep++) {
      for (let k = 1; k < nodes.length - 1; k++) {
        nodes = best(candidates(nodes, k, cells.length), badness);
      }
    }
    tried.push({ nodes, bad: badness(nodes) });
  }
  const least = Math.min(...tried.map((t) => t.bad));
  return tried.find((t) => t.bad <= Math.max(1, least * 1.1))!.nodes;
}

/**
 * The chain with nodes at some slice borders.
 *
 * What a slice stores is shared between the nodes on either side by how near it is to each, counted
 * in resistance. That keeps the heat in a steady profile exact however unlike the slices are.
 */
export function lump(cells: readonly Cell[], nodes: readonly number[], faces: Faces): Chain {
  const resistance = [faces.inner];
  const capacity = nodes.map(() => 0);
  for (let k = 0; k + 1 < nodes.length; k++) {
    const inside = cells.slice(nodes[k], nodes[k + 1]);
    const whole = inside.reduce((sum, cell) => sum + cell.resistance, 0);
    let passed = 0;
    for (const cell of inside) {
      const beyond = whole > 0 ? (passed + cell.resistance / 2) / whole : 0.5;
      capacity[k]! += cell.capacity * (1 - beyond);
      capacity[k + 1]! += cell.capacity * beyond;
      passed += cell.resistance;
    }
    resistance.push(whole);
  }
  resistance.push(faces.outer);
  return { resistance, capacity: withFilms(capacity) };
}

/** No node without capacity: what is missing is taken from the richest node while it can spare it. */
function withFilms(capacity: number[]): number[] {
  for (let k = 0; k < capacity.length; k++) {
    const missing = FILM - capacity[k]!;
    if (missing <= 0) continue;
    const richest = capacity.indexOf(Math.max(...capacity));
    if (capacity[richest]! - missing >= FILM) capacity[richest]! -= missing;
    capacity[k] = FILM;
  }
  return capacity;
}

/** Largest error as a multiple of its limit; what films store is no error. */
function worstError(
  got: PeriodicTransfer,
  exact: PeriodicTransfer,
  steady: number,
  bothFaces: boolean,
): number {
  const inner = Math.hypot(...exact.innerAdmittance);
  const outer = Math.hypot(...exact.outerAdmittance);
  return Math.max(
    distance(got.innerAdmittance, exact.innerAdmittance) / Math.max(LIMIT * inner, FILM_ADMITTANCE),
    Math.abs(got.innerCapacity - exact.innerCapacity) /
      Math.max(LIMIT * exact.innerCapacity, 2 * FILM),
    distance(got.transmittance, exact.transmittance) / (LIMIT * steady),
    bothFaces
      ? distance(got.outerAdmittance, exact.outerAdmittance) /
          Math.max(LIMIT * outer, FILM_ADMITTANCE)
      : 0,
  );
}

/** Node sets with one border more (k null) or with node k elsewhere between its neighbours. */
function candidates(nodes: readonly number[], k: number | null, last: number): number[][] {
  const kept = k === null ? [...nodes] : nodes.filter((_, i) => i !== k);
  const sets: number[][] = [];
  for (let border = 1; border < last; border++) {
    if (!kept.includes(border)) sets.push([...kept, border].sort((a, b) => a - b));
  }
  return sets;
}

function best(sets: readonly number[][], badness: (nodes: readonly number[]) => number): number[] {
  let least = Number.POSITIVE_INFINITY;
  let chosen = sets[0]!;
  for (const set of sets) {
    const b = badness(set);
    if (b < least) {
      least = b;
      chosen = set;
    }
  }
  return chosen;
}

function distance(a: readonly [number, number], b: readonly [number, number]): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

const LIMIT = 0.05; // of each figure
const FILM = 100; // [J/(m2 K)]: a coat of paint
const FILM_ADMITTANCE = (4 * Math.PI * FILM) / SECONDS_PER_DAY; // of one and what it lacks elsewhere [W/(m2 K)]
const MOST_NODES = 12;
const SWEEPS = 2; // a second round saves a node in every tenth wall
