import { cosineOf } from './portable-math.ts';
/** Draws numbers evenly from 0 (included) to 1 (excluded). */
export type Random = () => number;

/**
 * A stream of even random numbers that the same seed repeats on any machine.
 *
 * Mulberry32: 32 bits of state, good enough for making weather and sampling doubts, not for secrets.
 *
 * @param seed  any whole number; its lowest 32 bits count
 * Source: T. Ettinger, 2017, public domain (from memory).
 */
export function seededRandom(seed: number): Random {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** One number from the normal distribution of mean 0 and standard deviation 1 (Box and Muller 1958). */
export function standardNormal(random: Random): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return radius * cosineOf(2 * Math.PI * random());
}
