/** Ends of an axis that shows all of some values, on round figures; 0 to 1 for none. */
export function roundDomain(values: Iterable<number>): [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (!(low <= high)) return [0, 1];
  const step = roundStep((high - low || Math.abs(high) || 1) / TICKS);
  const [from, to] = [Math.floor(low / step), Math.ceil(high / step)];
  return [from * step, (to > from ? to : from + 1) * step];
}

/** The next of 1, 2 and 5 times a power of ten at or above a distance. */
function roundStep(distance: number): number {
  const power = 10 ** Math.floor(Math.log10(distance));
  return power * (ROUND.find((round) => round * power >= distance * (1 - 1e-9)) ?? 10);
}

const ROUND = [1, 2, 5] as const;
const TICKS = 5;
