/** A word beside a value, to its left or right, and the room it needs from there. */
interface WordAt {
  readonly at: number;
  readonly side: -1 | 1;
  /** [px] */
  readonly room: number;
}

/**
 * Ends of a level axis on which the values are as far apart as can be with every word inside the
 * plot. Where all values are equal it reaches a little to both sides.
 *
 * @param values  at least one
 * @param words  no two so wide that together they fill the plot
 * @param plot  how wide it is [px]
 */
export function axisWithRoom(
  values: readonly number[],
  words: readonly WordAt[],
  plot: number,
): [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  if (low === high) {
    const half = Math.max(1, Math.abs(low) / 100);
    return [low - half, low + half];
  }
  const before = [{ at: low, room: MARGIN }, ...words.filter(({ side }) => side < 0)];
  const behind = [{ at: high, room: MARGIN }, ...words.filter(({ side }) => side > 0)];
  // Two words that look away from each other leave so many pixels to what lies between them.
  const perPixel = Math.max(
    ...before.flatMap((a) => behind.map((b) => (b.at - a.at) / (plot - a.room - b.room))),
  );
  const from = Math.min(...before.map(({ at, room }) => at - room * perPixel));
  return [from, from + plot * perPixel];
}

const MARGIN = 6; // px
