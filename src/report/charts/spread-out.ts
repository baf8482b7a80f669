/**
 * Places near the values given and at least a gap apart, in the same order, inside the ends where
 * there is room for all of them.
 *
 * @returns one place per value, in the order of the values
 */
export function spreadOut(
  values: readonly number[],
  gap: number,
  [low, high]: readonly [number, number],
): number[] {
  const order = values.map((_, k) => k).sort((a, b) => values[a]! - values[b]!);
  const places = order.map((k) => Math.min(high, Math.max(low, values[k]!)));
  for (let n = 1; n < places.length; n++) {
    places[n] = Math.max(places[n]!, places[n - 1]! + gap);
  }
  let roof = Math.max(high, low + gap * (places.length - 1));
  for (let n = places.length - 1; n >= 0; n--) {
    places[n] = Math.min(places[n]!, roof);
    roof = places[n]! - gap;
  }
  const found = new Array<number>(values.length);
  order.forEach((k, n) => {
    found[k] = places[n]!;
  });
  return found;
}
