/** Seeded choices: the same seed makes the same case, on any machine. */
export interface Chooser {
  /** A whole number from 0 to below `n`. */
  readonly index: (n: number) => number;
  /** A number between two. */
  readonly between: (low: number, high: number) => number;
  readonly chance: (share: number) => boolean;
  readonly pick: <T>(list: readonly T[]) => T;
}

/** @param seed  any whole number; neighbouring seeds give unrelated choices */
export function createChooser(seed: number): Chooser {
  let state = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) >>> 0;
  // Mulberry32: quality enough for test cases.
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const index = (n: number): number => Math.min(n - 1, Math.floor(next() * n));
  return {
    index,
    between: (low, high) => low + (high - low) * next(),
    chance: (share) => next() < share,
    pick: (list) => list[index(list.length)]!,
  };
}
