/** Rectangle that a word takes up. [px] */
export interface WordBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * Pieces of an upright line, left out where it would run through words, from top to bottom.
 *
 * @param x  of the line [px]
 * @param ends  its top and its bottom [px]
 */
export function aroundWords(
  x: number,
  [top, bottom]: readonly [number, number],
  words: readonly WordBox[],
): { top: number; bottom: number }[] {
  const crossed = words
    .filter(({ left, right }) => left - NEAR < x && x < right + NEAR)
    .sort((a, b) => a.top - b.top);
  const pieces: { top: number; bottom: number }[] = [];
  let from = top;
  for (const word of crossed) {
    if (word.top > from) pieces.push({ top: from, bottom: Math.min(word.top, bottom) });
    from = Math.max(from, word.bottom);
  }
  if (from < bottom) pieces.push({ top: from, bottom });
  return pieces;
}

const NEAR = 2; // px
