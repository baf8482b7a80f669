import { BOOK } from './ledger-accumulator.ts';
import { CHAIN, LINK, NODE, ROOM } from './state-layout.ts';

/**
 * Elements and internal masses of the home as one-dimensional RC networks (chains of nodes).
 *
 * The near end of a chain is a room; its far end is a boundary temperature, adiabatic, or a second
 * room. Conductances and capacities are constant, so the factors of the tridiagonal elimination
 * (Thomas algorithm) are computed once, and a step needs one forward and one backward sweep.
 */
export interface Chains {
  readonly count: number;
  /** CHAIN records, LINK records, and NODE records from the near room outwards. */
  readonly chains: Float64Array;
  readonly links: Int32Array;
  readonly nodes: Float64Array;
}

/**
 * Forward elimination (Thomas algorithm) of each chain, from the far end, with room temperatures set
 * to 0 °C. Adds the resulting heat to the rooms' right-hand sides. [W]
 *
 * @param rooms     ROOM records, with this step's radiant gains
 * @param boundary  temperature at each boundary, mean over the step [°C]
 * @param rhs       one number a room
 */
export function sweepChains(
  { count, chains, links, nodes }: Chains,
  rooms: Float64Array,
  boundary: Float64Array,
  rhs: Float64Array,
): void {
  for (let c = 0, link = 0, chain = 0; c < count; c++, link += LINK_STRIDE, chain += CHAIN_STRIDE) {
    const first = links[link + FIRST]!;
    const last = links[link + LAST]!;
    const r = links[link + ROOM_AT]!;
    const b = links[link + BOUNDARY]!;
    let v = nodes[last + OWN]! * nodes[last + TEMPERATURE]!;
    if (b >= 0) v += chains[chain + FAR_SHARE]! * boundary[b]!;
    for (let k = last - NODE_STRIDE; k >= first; k -= NODE_STRIDE) {
      nodes[k + NODE_STRIDE + SWEPT] = v;
      v = nodes[k + OWN]! * nodes[k + TEMPERATURE]! + nodes[k + INWARD]! * v;
    }
    const gain =
      chains[chain + RADIANT_SHARE]! * rooms[r + RADIANT_GAIN]! +
      chains[chain + SUN_SHARE]! * rooms[r + SUN_ON_SURFACES]!;
    v += gain * nodes[first + OVER_PIVOT]!;
    nodes[first + SWEPT] = v;
    const room = links[link + NEAR]!;
    rhs[room] = rhs[room]! + chains[chain + NEAR_G]! * v;
    const far = links[link + FAR_ROOM]!;
    if (far < 0) continue;
    for (let k = first + NODE_STRIDE; k <= last; k += NODE_STRIDE) {
      v = nodes[k + SWEPT]! + nodes[k + OUTWARD]! * v;
    }
    rhs[far] = rhs[far]! + chains[chain + FAR_G]! * v;
  }
}

/**
 * Back substitution once the rooms' means are known: update the node temperatures, sum each room's
 * surface temperatures, and add the heat through the far ends to the ledger.
 *
 * A room's ledger covers its chains up to their far ends; the far room of a partition gets what
 * leaves it.
 *
 * @param rooms  ROOM records, with this step's mean temperatures and radiant heat of emitters
 * @param flows  BOOK records, this month's from record `row` on
 */
export function settleChains(
  { count, chains, links, nodes }: Chains,
  rooms: Float64Array,
  boundary: Float64Array,
  dt: number,
  flows: Float64Array,
  row: number,
): void {
  const from = row * BOOK_STRIDE;
  for (let c = 0, link = 0, chain = 0; c < count; c++, link += LINK_STRIDE, chain += CHAIN_STRIDE) {
    const first = links[link + FIRST]!;
    const last = links[link + LAST]!;
    const r = links[link + ROOM_AT]!;
    const far = links[link + FAR_AT]!;
    const area = chains[chain + AREA]!;
    if (far >= 0) warmFromFar(nodes, links, link, chains[chain + FAR_SHARE]! * rooms[far + MEAN]!);
    const radiated = rooms[r + EMITTED]! * rooms[r + EMITTER_SHARE]!;
    const heat =
      chains[chain + NEAR_G]! * rooms[r + MEAN]! + chains[chain + RADIANT_SHARE]! * radiated;
    let mean = nodes[first + SWEPT]! + heat * nodes[first + OVER_PIVOT]!;
    let before = nodes[first + TEMPERATURE]!;
    nodes[first + TEMPERATURE] = before + (mean - before) * nodes[first + OVER_WEIGHT]!;
    rooms[r + WARM_SURFACE] = rooms[r + WARM_SURFACE]! + area * mean;
    for (let k = first + NODE_STRIDE; k <= last; k += NODE_STRIDE) {
      mean = nodes[k + SWEPT]! + nodes[k + OUTWARD]! * mean;
      before = nodes[k + TEMPERATURE]!;
      nodes[k + TEMPERATURE] = before + (mean - before) * nodes[k + OVER_WEIGHT]!;
    }
    const b = links[link + BOUNDARY]!;
    if (b >= 0) {
      const book = from + links[link + BOOKED]!;
      flows[book] = flows[book]! + chains[chain + FAR_G]! * dt * (boundary[b]! - mean);
    } else if (far >= 0) {
      const over = chains[chain + FAR_G]! * dt * (mean - rooms[far + MEAN]!);
      const here = from + links[link + BOOKED]!;
      const there = from + links[link + FAR_BOOKED]!;
      flows[here] = flows[here]! - over;
      flows[there] = flows[there]! + over;
      rooms[far + WARM_SURFACE] = rooms[far + WARM_SURFACE]! + area * mean;
    }
  }
}

/** Add the effect of a second room at the far end to the eliminated right-hand sides of a chain. */
function warmFromFar(nodes: Float64Array, links: Int32Array, link: number, push: number): void {
  const first = links[link + FIRST]!;
  let v = push;
  for (let k = links[link + LAST]!; ; k -= NODE_STRIDE) {
    nodes[k + SWEPT] = nodes[k + SWEPT]! + v;
    if (k === first) return;
    v *= nodes[k - NODE_STRIDE + INWARD]!;
  }
}

const { own: OWN, inward: INWARD, outward: OUTWARD, overPivot: OVER_PIVOT } = NODE;
const { overWeight: OVER_WEIGHT, temperature: TEMPERATURE, swept: SWEPT } = NODE;
const { nearG: NEAR_G, farG: FAR_G, farShare: FAR_SHARE, area: AREA } = CHAIN;
const { radiantShare: RADIANT_SHARE, sunShare: SUN_SHARE } = CHAIN;
const { first: FIRST, last: LAST, room: NEAR, roomAt: ROOM_AT, boundary: BOUNDARY } = LINK;
const { farRoom: FAR_ROOM, farAt: FAR_AT, book: BOOKED, farBook: FAR_BOOKED } = LINK;
const { meanTemperature: MEAN, radiantGain: RADIANT_GAIN, sunOnSurfaces: SUN_ON_SURFACES } = ROOM;
const { emitted: EMITTED, radiantShare: EMITTER_SHARE, warmSurface: WARM_SURFACE } = ROOM;

const CHAIN_STRIDE = CHAIN.stride;
const LINK_STRIDE = LINK.stride;
const NODE_STRIDE = NODE.stride;
const BOOK_STRIDE = BOOK.stride;
