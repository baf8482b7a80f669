import { hashFrom, stemOf } from './seeded-draw.ts';

/**
 * Add to a reading one number from the normal distribution of mean 0 and standard deviation `noise`
 * that depends on nothing but `stem` and `b`.
 *
 * The area under the bell is cut into layers of one size. A draw whose layer lies wholly under the
 * bell where it falls, 99 in 100, costs one hash and one product, so it is fit for the time loop.
 * No fraction is handed over or back, so that none has to be put on the heap.
 *
 * @param stem  what is drawn for, from `stemOf`
 * @param b     when, e.g. a step
 *
 * Source: G. Marsaglia and W. W. Tsang, "The ziggurat method for generating random variables",
 * J. Stat. Softw. 5(8), 2000; layer and place from bits of their own, as J. A. Doornik advised in
 * 2005 (both from memory).
 */
export function addNormal(noisy: Noisy, stem: number, b: number): void {
  const hash = hashFrom(stem, b);
  const layer = hash & (LAYERS - 1);
  const x = placeIn(layer, hash);
  if (Math.abs(x) < EDGE[layer + 1]!) noisy.reading += noisy.noise * x;
  else if (layer === 0) addFromTail(noisy, stem, b, Math.sign(x));
  else addNearEdge(noisy, stem, b);
}

/** A reading, and the standard deviation of its noise. */
export interface Noisy {
  reading: number;
  readonly noise: number;
}

/** The draw fell where its layer crosses the bell. */
function addNearEdge(noisy: Noisy, stem: number, b: number): void {
  const hash = hashFrom(stem, b);
  const layer = hash & (LAYERS - 1);
  const x = placeIn(layer, hash);
  const low = bell(EDGE[layer]!);
  const high = bell(EDGE[layer + 1]!);
  const height = low + drawAgain(stem, 1, b) * (high - low);
  if (height < bell(x)) noisy.reading += noisy.noise * x;
  else addNormal(noisy, stemOf(stem, 3), b);
}

/** The draw fell beyond the last edge. */
function addFromTail(noisy: Noisy, stem: number, b: number, sign: number): void {
  let tried = stem;
  for (;;) {
    const beyond = -Math.log(drawAgain(tried, 1, b)) / LAST_EDGE;
    const height = -Math.log(drawAgain(tried, 2, b));
    if (2 * height > beyond * beyond) {
      noisy.reading += noisy.noise * (sign * (LAST_EDGE + beyond));
      return;
    }
    tried = stemOf(tried, 3);
  }
}

/** Where in its layer a draw falls, left or right of the middle. */
function placeIn(layer: number, hash: number): number {
  return ((hash >> LAYER_BITS) + 0.5) * STRIDE[layer]!;
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

/** No draw is this many standard deviations out: the tail's smallest even draw ends it at 9.92. */
export const MOST_DEVIATIONS = 10;

const LAYER_BITS = 8;
const LAYERS = 2 ** LAYER_BITS;
/** For 256 layers: where the lowest gives way to the tail, and the area of each under the bare bell. */
const LAST_EDGE = 3.6541528853610088;
const AREA = 0.00492867323399;
const EDGE = edges();
/** What one step of the hash is worth across each layer. */
const STRIDE = EDGE.map((edge) => edge / 2 ** (31 - LAYER_BITS));
