/**
 * A figure with no more digits behind the point than are printed, so that a sum can be redone by
 * hand: halves go away from zero, and what is a half in decimals counts as one.
 */
export function rounded(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  const size = Math.round(Number((Math.abs(value) * scale).toPrecision(15))) / scale;
  return value < 0 ? 0 - size : size;
}
