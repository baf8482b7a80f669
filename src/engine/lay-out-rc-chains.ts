import type { Element, Room } from '../home/home.ts';
import { ENERGY_TERMS } from './ledger.ts';
import { BOOK } from './ledger-accumulator.ts';
import { implicitWeight } from './numerics/implicit-weight.ts';
import type { Chains } from './rc-chains.ts';
import { CHAIN, LINK, NODE, ROOM } from './state-layout.ts';

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
  const specs = merge([...elements.map((e) => fromElement(e, boundaryOf(e))), ...massOf(rooms)]);
  const nodeCount = specs.reduce((sum, s) => sum + s.capacity.length, 0);
  const all: Chains = {
    count: specs.length,
    chains: new Float64Array(specs.length * CHAIN_STRIDE),
    links: new Int32Array(specs.length * LINK_STRIDE),
    nodes: new Float64Array(nodeCount * NODE_STRIDE),
  };
  let first = 0;
  specs.forEach((spec, c) => {
    const end = first + spec.capacity.length;
    layOutLink(all.links, c * LINK_STRIDE, spec, first, end - 1);
    all.chains[c * CHAIN_STRIDE + AREA] = spec.area;
    eliminate(all, c, spec, dt);
    first = end;
  });
  shareGains(all, specs, rooms.length);
  return all;
}

function layOutLink(
  links: Int32Array,
  link: number,
  { room, farRoom, boundary, kind }: Spec,
  first: number,
  last: number,
): void {
  links[link + FIRST] = first * NODE_STRIDE;
  links[link + LAST] = last * NODE_STRIDE;
  links[link + NEAR] = room;
  links[link + ROOM_AT] = room * ROOM_STRIDE;
  links[link + FAR_ROOM] = farRoom;
  links[link + FAR_AT] = farRoom < 0 ? -1 : farRoom * ROOM_STRIDE;
  links[link + BOUNDARY] = boundary;
  links[link + BOOKED] = room * BOOK_STRIDE + WALLS + kind;
  links[link + FAR_BOOKED] = farRoom * BOOK_STRIDE + WALLS + kind;
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
  const { resistance, capacity } = chain;
  return {
    room,
    farRoom: far.to === 'room' ? far.room : -1,
    boundary,
    kind: ELEMENT_KINDS.indexOf(kind),
    area,
    resistance: far.to === 'nothing' ? [...resistance.slice(0, -1), Infinity] : resistance,
    capacity,
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

/** Walls that are alike in all but size behave as one: fewer chains, the same heat. */
function merge(specs: readonly Spec[]): Spec[] {
  const groups = new Map<string, Spec>();
  for (const spec of specs) {
    const key = JSON.stringify({ ...spec, area: 0 });
    const known = groups.get(key);
    groups.set(key, known === undefined ? spec : { ...known, area: known.area + spec.area });
  }
  return [...groups.values()];
}

/** Eliminate a chain's nodes from the far end inwards, once and for all steps. */
function eliminate(all: Chains, c: number, spec: Spec, dt: number): void {
  const { chains, nodes } = all;
  const n = spec.capacity.length;
  const at = (k: number): number => all.links[c * LINK_STRIDE + FIRST]! + k * NODE_STRIDE;
  // g[k] joins node k - 1 and node k
  const g = spec.resistance.map((r) => spec.area / Math.max(r, LEAST_RESISTANCE));
  for (let k = n - 1; k >= 0; k--) {
    const capacity = spec.capacity[k]! * spec.area;
    const weight = implicitWeight(((g[k]! + g[k + 1]!) * dt) / capacity);
    const storage = capacity / (weight * dt);
    let pivot = storage + g[k]! + g[k + 1]!;
    if (k < n - 1) pivot -= g[k + 1]! * nodes[at(k + 1) + OUTWARD]!;
    nodes[at(k) + CAPACITY] = capacity;
    nodes[at(k) + OVER_WEIGHT] = 1 / weight;
    nodes[at(k) + OVER_PIVOT] = 1 / pivot;
    nodes[at(k) + OWN] = storage / pivot;
    nodes[at(k) + INWARD] = k < n - 1 ? g[k + 1]! / pivot : 0;
    nodes[at(k) + OUTWARD] = g[k]! / pivot;
  }
  const farShare = g[n]! * nodes[at(n - 1) + OVER_PIVOT]!;
  // One kelvin at the near room, then at the far one, seen at both ends.
  let near = g[0]! * nodes[at(0) + OVER_PIVOT]!;
  const nearToNear = near;
  for (let k = 1; k < n; k++) near *= nodes[at(k) + OUTWARD]!;
  const pushed = new Float64Array(n);
  pushed[n - 1] = farShare;
  for (let k = n - 2; k >= 0; k--) pushed[k] = pushed[k + 1]! * nodes[at(k) + INWARD]!;
  let far = pushed[0]!;
  for (let k = 1; k < n; k++) far = pushed[k]! + nodes[at(k) + OUTWARD]! * far;
  const chain = c * CHAIN_STRIDE;
  chains[chain + NEAR_G] = g[0]!;
  chains[chain + FAR_G] = g[n]!;
  chains[chain + FAR_SHARE] = farShare;
  chains[chain + CHAIN.nearToNear] = nearToNear;
  chains[chain + CHAIN.nearToFar] = near;
  chains[chain + CHAIN.farToNear] = pushed[0]!;
  chains[chain + CHAIN.farToFar] = far;
}

/**
 * Radiant gains spread over the room's own surfaces by area; the sun falls on floors first.
 * Walls shared with another room take no part: what falls on them in truth warms the mass here.
 */
function shareGains({ chains }: Chains, specs: readonly Spec[], rooms: number): void {
  for (let i = 0; i < rooms; i++) {
    const mine = specs
      .map((spec, c) => ({ ...spec, chain: c * CHAIN_STRIDE }))
      .filter((s) => s.room === i && s.farRoom < 0);
    const all = mine.reduce((sum, s) => sum + s.area, 0);
    const floors = mine.filter((s) => s.kind === FLOOR).reduce((sum, s) => sum + s.area, 0);
    const onFloor = floors > 0 ? SUN_ON_FLOOR : 0;
    for (const s of mine) {
      chains[s.chain + RADIANT_SHARE] = s.area / all;
      chains[s.chain + SUN_SHARE] =
        ((1 - onFloor) * s.area) / all + (s.kind === FLOOR ? (onFloor * s.area) / floors : 0);
    }
  }
}

/** Elements by the ledger term that their heat is added to. */
const ELEMENT_KINDS = ['wall', 'floor', 'roof', 'partition'] as const;
const FLOOR = ELEMENT_KINDS.indexOf('floor');
const WALLS = ENERGY_TERMS.indexOf('walls');

const { own: OWN, inward: INWARD, outward: OUTWARD, overPivot: OVER_PIVOT } = NODE;
const { overWeight: OVER_WEIGHT, capacity: CAPACITY } = NODE;
const { nearG: NEAR_G, farG: FAR_G, farShare: FAR_SHARE, area: AREA } = CHAIN;
const { radiantShare: RADIANT_SHARE, sunShare: SUN_SHARE } = CHAIN;
const { first: FIRST, last: LAST, room: NEAR, roomAt: ROOM_AT, boundary: BOUNDARY } = LINK;
const { farRoom: FAR_ROOM, farAt: FAR_AT, book: BOOKED, farBook: FAR_BOOKED } = LINK;

/** Surface resistance of furniture and light partitions: ISO 6946, horizontal heat flow. [m2 K/W] */
const MASS_SURFACE_RESISTANCE = 0.13;

/** Stands in where a far side touches the boundary directly. [m2 K/W] */
const LEAST_RESISTANCE = 1e-4;

/** Share of the solar gain on surfaces that lands on the floor before the rest is spread. [-] */
const SUN_ON_FLOOR = 0.5;

const ROOM_STRIDE = ROOM.stride;
const CHAIN_STRIDE = CHAIN.stride;
const LINK_STRIDE = LINK.stride;
const NODE_STRIDE = NODE.stride;
const BOOK_STRIDE = BOOK.stride;
