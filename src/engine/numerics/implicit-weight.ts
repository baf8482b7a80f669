/**
 * How much of a step's end enters its mean, for a store that relaxes at a given rate.
 *
 * With the step mean m as the unknown and x0 at the start, a step reads
 *
 *     (m - x0) / (w dt) = rate of change at m,        x1 = x0 + (m - x0) / w
 *
 * and w = (3 + 2 z + z2)/(6 + 3 z + z2), z = r dt, makes the amplification 1/(1 + z + z2/2 + z3/6):
 * the (0,3) Padé approximation of exp(-z). Third order for a store alone, second where stores act on
 * each other; for stiff stores (z large) w tends to 1 and the start is forgotten, so nothing rings;
 * means stay between the values they relax from and to.
 *
 * @param z  rate times step [-], 0 to Infinity
 * @returns weight [-], 0.5 to 1
 */
export function implicitWeight(z: number): number {
  return z < LARGE ? (3 + z * (2 + z)) / (6 + z * (3 + z)) : 1;
}

/** One over the weight, for a loop that divides by it. @param z  rate times step [-], 0 to Infinity */
export function overImplicitWeight(z: number): number {
  return z < LARGE ? (6 + z * (3 + z)) / (3 + z * (2 + z)) : 1;
}

const LARGE = 1e12;
