/**
 * How far a level moves, as a share of the larger of both: 1000 to 2000 ppm is 0.5 and 2000 to 1000 is
 * -0.5, so that what a plan makes worse and what undoes it weigh alike. 0 where both are 0. [-1 to 1]
 *
 * @param from  at least 0
 * @param to    at least 0
 */
export function relativeChange(from: number, to: number): number {
  const larger = Math.max(from, to);
  return larger > 0 ? (to - from) / larger : 0;
}
