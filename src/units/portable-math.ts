/*
 * Sine, cosine and power that give the same bits in every JavaScript engine, so that a home run in a
 * page gives the figures of the command line. Math.sin, Math.cos and Math.pow differ in the last bit
 * between versions of engines; tangent, exponential and logarithm, which these are made of, agree in
 * those that were compared. Their error is a few units in the last place, of the power as many more as
 * the logarithm of the result is large.
 */

/** @param angle  [rad] */
export function sineOf(angle: number): number {
  const t = Math.tan(angle / 2);
  return (2 * t) / (1 + t * t);
}

/** @param angle  [rad] */
export function cosineOf(angle: number): number {
  const t = Math.tan(angle / 2);
  return (1 - t * t) / (1 + t * t);
}

/** @param base  0 or more */
export function powerOf(base: number, exponent: number): number {
  return base === 0
    ? exponent === 0
      ? 1
      : exponent > 0
        ? 0
        : Number.POSITIVE_INFINITY
    : Math.exp(exponent * Math.log(base));
}
