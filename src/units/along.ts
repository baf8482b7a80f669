/**
 * Value of a curve at x: straight between its points, level beyond the first and the last.
 *
 * @param curve  points by ascending `outdoor`, at least one
 */
export function along(
  curve: { readonly outdoor: readonly number[]; readonly value: readonly number[] },
  x: number,
): number {
  const { outdoor, value } = curve;
  const last = outdoor.length - 1;
  if (x <= outdoor[0]!) return value[0]!;
  if (x >= outdoor[last]!) return value[last]!;
  let k = 0;
  while (x > outdoor[k + 1]!) k++;
  const part = (x - outdoor[k]!) / (outdoor[k + 1]! - outdoor[k]!);
  return value[k]! + part * (value[k + 1]! - value[k]!);
}
