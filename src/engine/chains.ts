import type { Element, Room } from '../home/home.ts';
import { implicitWeight } from './numerics/implicit-weight.ts';

/**
 * Every element and every internal mass of the home as chains of nodes in flat arrays.
 *
 * A chain hangs on a room at its near end; its far end is a boundary temperature, nothing, or a
 * second room. All its conductances and capacities are constant, so everything but one sweep a step
 * is worked out once, and the chain drops out of the room's equation in closed form.
 */
export interface Chains {
  readonly count: number;
  /** Nodes of chain c are `[start[c], start[c + 1])`, from the near room outwards. */
  readonly start: Int32Array;
  readonly room: Int32Array;
  /** Second room, or -1. */
  readonly farRoom: Int32Array;
  /** Number of the boundary temperature at the far end, or -1. */
  readonly boundary: Int32Array;
  /** Index into ENERGY_KINDS, or -1 for internal mass. */
  readonly kind: Int8Array;
  /** Surface facing the near room. [m2] */
  readonly area: Float64Array;
  /** Near room to first node, and last node to far side. [W/K] */
  readonly nearG: Float64Array;
  readonly farG: Float64Array;
  /** Share of the near room's radiant gains, and of its sun on surfaces, that lands on the first node. [-] */
  readonly radiantShare: Float64Array;
  readonly sunShare: Float64Array;

  /** Per node: heat capacity [J/K]; capacity over (weight times step) [W/K]; one over the weight. */
  readonly capacity: Float64Array;
  readonly storage: Float64Array;
  readonly overWeight: Float64Array;
  /** Per node: one over the pivot [K/W], and what an unknown passes on towards the room [-]. */
  readonly overPivot: Float64Array;
  readonly carry: Float64Array;
  /** Per node: answer to one kelvin at the near room and at the far room. [K/K] */
  readonly fromNear: Float64Array;
  readonly fromFar: Float64Array;

  /** Per node, state: temperature at the start of the step, and mean over it. [°C] */
  readonly temperature: Float64Array;
  readonly mean: Float64Array;
  /** Per node, scratch. */
  readonly swept: Float64Array;
}

/** Elements by the ledger term they are booked under. */
export const ELEMENT_KINDS = ['wall', 'floor', 'roof', 'partition'] as const;

/**
 * Lay out the chains of a home.
 *
 * @param boundaryOf  number of the boundary temperature of an element's far side, or -1
 * @param dt          control step [s]
 */
export function layOutChains(
  rooms: readonly Room[],
  elements: readonly Element[],
  boundaryOf: (element: Element) => number,
  dt: number,
): Chains {
  const specs = [...elements.map((e) => fromElement(e, boundaryOf(e))), ...massOf(rooms)];
  const start = new Int32Array(specs.length + 1);
  specs.forEach((spec, c) => {
    start[c + 1] = start[c]! + spec.capacity.length;
  });
  const nodes = start[specs.length]!;
  const perChain = (): Float64Array => new Float64Array(specs.length);
  const perNode = (): Float64Array => new Float64Array(nodes);
  const chains: Chains = {
    count: specs.length,
    start,
    room: Int32Array.from(specs, (s) => s.room),
    farRoom: Int32Array.from(specs, (s) => s.farRoom),
    boundary: Int32Array.from(specs, (s) => s.boundary),
    kind: Int8Array.from(specs, (s) => s.kind),
    area: Float64Array.from(specs, (s) => s.area),
    nearG: perChain(),
    farG: perChain(),
    radiantShare: perChain(),
    sunShare: perChain(),
    capacity: perNode(),
    storage: perNode(),
    overWeight: perNode(),
    overPivot: perNode(),
    carry: perNode(),
    fromNear: perNode(),
    fromFar: perNode(),
    temperature: perNode(),
    mean: perNode(),
    swept: perNode(),
  };
  specs.forEach((spec, c) => {
    eliminate(chains, c, spec, dt);
  });
  shareGains(chains, specs, rooms.length);
  return chains;
}

/**
 * Sweep all chains from their far ends, before the rooms are solved: what each would do were its
 * rooms at 0 °C. Adds the resulting heat to the rooms' right-hand sides. [W]
 *
 * @param boundary  temperature at each boundary, mean over the step [°C]
 * @param radiant   radiant gains of each room, apart from the emitters' [W]
 * @param sun       sun on the surfaces of each room [W]
 */
export function sweepChains(
  chains: Chains,
  boundary: Float64Array,
  radiant: Float64Array,
  sun: Float64Array,
  rhs: Float64Array,
): void {
  const { count, start, room, farRoom, boundary: boundaryOf, nearG, farG } = chains;
  const { radiantShare, sunShare, storage, overPivot, carry, temperature, mean, swept } = chains;
  for (let c = 0; c < count; c++) {
    const first = start[c]!;
    const last = start[c + 1]! - 1;
    const i = room[c]!;
    const b = boundaryOf[c]!;
    let y = storage[last]! * temperature[last]!;
    if (b >= 0) y += farG[c]! * boundary[b]!;
    for (let k = last - 1; k >= first; k--) {
      swept[k + 1] = y;
      y = storage[k]! * temperature[k]! + carry[k]! * y;
    }
    y += radiantShare[c]! * radiant[i]! + sunShare[c]! * sun[i]!;
    swept[first] = y;
    rhs[i] = rhs[i]! + nearG[c]! * overPivot[first]! * y;
    const j = farRoom[c]!;
    if (j >= 0) {
      let m = y * overPivot[first]!;
      for (let k = first; k < last; k++) {
        m = swept[k + 1]! * overPivot[k + 1]! + carry[k]! * m;
      }
      rhs[j] = rhs[j]! + farG[c]! * m;
    }
    mean[first] = y; // kept until the rooms are known
  }
}

/**
 * Give every node its mean and its new temperature, once the rooms' means are known.
 *
 * @param air      mean air temperature of each room [°C]
 * @param emitted  radiant heat of each room's emitters [W]
 */
export function settleChains(chains: Chains, air: Float64Array, emitted: Float64Array): void {
  const { count, start, room, farRoom, nearG, farG, radiantShare } = chains;
  const { overWeight, overPivot, carry, temperature, mean, swept } = chains;
  for (let c = 0; c < count; c++) {
    const first = start[c]!;
    const last = start[c + 1]! - 1;
    const i = room[c]!;
    const j = farRoom[c]!;
    if (j >= 0) backFrom(chains, c, farG[c]! * air[j]!);
    let m =
      (swept[first]! + nearG[c]! * air[i]! + radiantShare[c]! * emitted[i]!) * overPivot[first]!;
    mean[first] = m;
    temperature[first] = temperature[first]! + (m - temperature[first]!) * overWeight[first]!;
    for (let k = first + 1; k <= last; k++) {
      m = swept[k]! * overPivot[k]! + carry[k - 1]! * m;
      mean[k] = m;
      temperature[k] = temperature[k]! + (m - temperature[k]!) * overWeight[k]!;
    }
  }
}

/** Add the heat that a far room pushes into the last node to what was swept. [W] */
function backFrom(chains: Chains, c: number, heat: number): void {
  const { start, carry, swept } = chains;
  const first = start[c]!;
  let y = heat;
  for (let k = start[c + 1]! - 1; k >= first; k--) {
    swept[k] = swept[k]! + y;
    if (k > first) y *= carry[k - 1]!;
  }
}

interface Spec {
  readonly room: number;
  readonly farRoom: number;
  readonly boundary: number;
  readonly kind: number;
  readonly area: number;
  readonly resistance: readonly number[];
  readonly capacity: readonly number[];
}

function fromElement(element: Element, boundary: number): Spec {
  const { room, area, chain, far, kind } = element;
  return {
    room,
    farRoom: far.to === 'room' ? far.room : -1,
    boundary,
    kind: ELEMENT_KINDS.indexOf(kind),
    area,
    resistance:
      far.to === 'nothing' ? [...chain.resistance.slice(0, -1), Infinity] : chain.resistance,
    capacity: chain.capacity,
  };
}

/** The internal mass of each room that has any: one node with nothing behind it. */
function massOf(rooms: readonly Room[]): Spec[] {
  return rooms.flatMap(({ mass }, room) =>
    mass.area > 0
      ? [
          {
            room,
            farRoom: -1,
            boundary: -1,
            kind: -1,
            area: mass.area,
            resistance: [MASS_SURFACE_RESISTANCE, Infinity],
            capacity: [mass.capacity / mass.area],
          },
        ]
      : [],
  );
}

function eliminate(chains: Chains, c: number, spec: Spec, dt: number): void {
  const first = chains.start[c]!;
  const n = spec.capacity.length;
  const g = spec.resistance.map((r) => spec.area / r); // g[k] joins node k - 1 and node k
  chains.nearG[c] = g[0]!;
  chains.farG[c] = g[n]!;
  for (let k = n - 1; k >= 0; k--) {
    const at = first + k;
    const capacity = spec.capacity[k]! * spec.area;
    const weight = implicitWeight(((g[k]! + g[k + 1]!) * dt) / capacity);
    chains.capacity[at] = capacity;
    chains.storage[at] = capacity / (weight * dt);
    chains.overWeight[at] = 1 / weight;
    let pivot = chains.storage[at]! + g[k]! + g[k + 1]!;
    if (k < n - 1) {
      chains.carry[at] = g[k + 1]! * chains.overPivot[at + 1]!;
      pivot -= g[k + 1]! * chains.carry[at]!;
    }
    chains.overPivot[at] = 1 / pivot;
  }
  // Answers to one kelvin at either end; the far end's answer travels back to the first node.
  let near = g[0]! * chains.overPivot[first]!;
  let pushed = g[n]!;
  for (let k = n - 1; k > 0; k--) pushed *= chains.carry[first + k - 1]!;
  let far = pushed * chains.overPivot[first]!;
  for (let k = 0; k < n; k++) {
    const at = first + k;
    if (k > 0) {
      near *= chains.carry[at - 1]!;
      let arrives = g[n]!;
      for (let q = n - 1; q > k; q--) arrives *= chains.carry[first + q - 1]!;
      far = arrives * chains.overPivot[at]! + chains.carry[at - 1]! * far;
    }
    chains.fromNear[at] = near;
    chains.fromFar[at] = spec.farRoom >= 0 ? far : 0;
  }
}

/**
 * Radiant gains spread over the room's own surfaces by area; the sun falls on floors first.
 * Walls shared with another room take no part: what falls on them in truth warms the mass here.
 */
function shareGains(chains: Chains, specs: readonly Spec[], rooms: number): void {
  for (let i = 0; i < rooms; i++) {
    const mine = specs.map((s, c) => ({ ...s, c })).filter((s) => s.room === i && s.farRoom < 0);
    const all = mine.reduce((sum, s) => sum + s.area, 0);
    const floors = mine.filter((s) => s.kind === FLOOR).reduce((sum, s) => sum + s.area, 0);
    const onFloor = floors > 0 ? SUN_ON_FLOOR : 0;
    for (const s of mine) {
      chains.radiantShare[s.c] = s.area / all;
      chains.sunShare[s.c] =
        ((1 - onFloor) * s.area) / all + (s.kind === FLOOR ? (onFloor * s.area) / floors : 0);
    }
  }
}

const FLOOR = ELEMENT_KINDS.indexOf('floor');

/** Of furniture and light partitions: as an inner wall surface, ISO 6946 horizontal heat flow. [m2 K/W] */
const MASS_SURFACE_RESISTANCE = 0.13;

/** Of the sun that reaches surfaces, the share that lands on the floor before the rest is spread. [-] */
const SUN_ON_FLOOR = 0.5;
