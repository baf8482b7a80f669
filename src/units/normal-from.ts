import { hashFrom, stemOf } from './seeded-draw.ts';

/**
 * One number from the normal distribution of mean 0 and standard deviation 1 that depends on nothing
 * but its arguments.
 *
 * The area under the bell is cut into layers of one size. A draw whose layer lies wholly under the
 * bell where it falls, 99 in 100, costs one hash and one product, so it is fit for the time loop.
 *
 * @param stem  what is drawn for, from `stemOf`
 * @param b     when, e.g. a step
 *
 * Source: G. Marsaglia and W. W. Tsang, "The ziggurat method for generating random variables",
 * J. Stat. Softw. 5(8), 2000; layer and place from bits of their own, as J. A. Doornik advised in
 * 2005 (both from memory).
 */
export function normalFrom(stem: number, b: number): number {
  const hash = hashFrom(stem, b);
  const layer = hash & (LAYERS - 1);
  const x = ((hash >> LAYER_BITS) + 0.5) * STRIDE[layer]!;
  // The plus tells the compiler that both are numbers, and saves it an object a draw.
  return Math.abs(x) < EDGE[layer + 1]! ? x : +nearEdge(x, layer, stem, b);
}

/** The draw fell where its layer crosses the bell, or beyond the last edge. */
function nearEdge(x: number, layer: number, stem: number, b: number): number {
  if (layer === 0) return Math.sign(x) * beyondLastEdge(stem, b);
  const low = bell(EDGE[layer]!);
  const high = bell(EDGE[layer + 1]!);
  const height = low + drawAgain(stem, 1, b) * (high - low);
  return height < bell(x) ? x : normalFrom(stemOf(stem, 3), b);
}

function beyondLastEdge(stem: number, b: number): number {
  const beyond = -Math.log(drawAgain(stem, 1, b)) / LAST_EDGE;
  const height = -Math.log(drawAgain(stem, 2, b));
  if (2 * height > beyond * beyond) return LAST_EDGE + beyond;
  return beyondLastEdge(stemOf(stem, 3), b);
}

/** Another even draw for the same thing and time, above 0 and below 1. */
function drawAgain(stem: number, which: number, b: number): number {
  return ((hashFrom(stemOf(stem, which), b) >>> 0) + 0.5) / 2 ** 32;
}

function bell(x: number): number {
  return Math.exp(-0.5 * x * x);
}

/** Outer edges of the layers, from the lowest, which stands for the tail as well, to the top's 0. */
function edges(): Float64Array {
  const edge = new Float64Array(LAYERS + 1);
  edge[0] = AREA / bell(LAST_EDGE);
  edge[1] = LAST_EDGE;
  for (let k = 2; k < LAYERS; k++) {
    edge[k] = Math.sqrt(-2 * Math.log(AREA / edge[k - 1]! + bell(edge[k - 1]!)));
  }
  return edge;
}

const LAYER_BITS = 8;
const LAYERS = 2 ** LAYER_BITS;
/** For 256 layers: where the lowest gives way to the tail, and the area of each under the bare bell. */
const LAST_EDGE = 3.6541528853610088;
const AREA = 0.00492867323399;
const EDGE = edges();
/** What one step of the hash is worth across each layer. */
const STRIDE = EDGE.map((edge) => edge / 2 ** (31 - LAYER_BITS));
