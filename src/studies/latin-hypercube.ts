import { seededRandom } from '../units/seeded-random.ts';

/**
 * Points spread evenly over a cube: each edge is cut into as many equal pieces as there are points,
 * and along each edge every piece holds exactly one point.
 *
 * @param dimensions  each draws from a stream of its own, so that a further one moves no other
 * @param seed  a whole number; the same gives the same points
 * @returns each point's coordinates, from 0 to less than 1
 *
 * Source: M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21(2), 1979, section 2.3.
 */
export function latinHypercube(samples: number, dimensions: number, seed: number): number[][] {
  const columns = Array.from({ length: dimensions }, (_, d) =>
    oneAPiece(samples, seed + Math.imul(d + 1, APART)),
  );
  return Array.from({ length: samples }, (_, k) => columns.map((column) => column[k]!));
}

/** One number out of each of so many equal pieces of 0 to 1, in random order. */
function oneAPiece(samples: number, seed: number): Float64Array {
  const random = seededRandom(seed);
  const order = Uint32Array.from({ length: samples }, (_, k) => k);
  for (let k = samples - 1; k > 0; k--) {
    const other = Math.floor(random() * (k + 1));
    [order[k], order[other]] = [order[other]!, order[k]!];
  }
  return Float64Array.from(order, (piece) => (piece + random()) / samples);
}

/** Sets seeds of neighbouring dimensions far apart. */
const APART = 0x9e3779b1;
