/*
 * Random numbers that depend on nothing but what they are drawn for: unlike those of a stream they do
 * not care how many came before. The same seed, thing and time give the same number in whatever order
 * they are asked for, so that two plans of one home share them. All of it allocates nothing. The
 * mixing is that of MurmurHash3 (A. Appleby, 2008, public domain, from memory).
 */

/**
 * Part of the hash that all draws for one thing share, to be computed once.
 *
 * @param seed  any whole number, its lowest 32 bits count; or the stem of what the thing belongs to
 * @param a     what is drawn for: a number for the purpose; likewise
 */
export function stemOf(seed: number, a: number): number {
  return blend(blend(0, seed), a);
}

/** Stir the letters of a text into a stem: what is drawn for something that has a name. */
export function stemOfText(stem: number, text: string): number {
  let hash = blend(stem, text.length);
  for (let k = 0; k < text.length; k++) hash = blend(hash, text.charCodeAt(k));
  return hash;
}

/** Scale a hash to 0 (included) to 1 (excluded). */
export function evenDraw(hash: number): number {
  return (hash >>> 0) / 4_294_967_296;
}

/**
 * A draw as 32 uniform bits; `evenDraw` scales them to 0 to 1.
 *
 * @param b  when, e.g. a step or a day; its lowest 32 bits count
 */
export function hashFrom(stem: number, b: number): number {
  let h = blend(stem, b);
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}

/** Stir one more number into a hash. */
function blend(hash: number, value: number): number {
  let k = Math.imul(value | 0, 0xcc9e2d51);
  k = Math.imul((k << 15) | (k >>> 17), 0x1b873593);
  const h = hash ^ k;
  return (Math.imul((h << 13) | (h >>> 19), 5) + 0xe6546b64) | 0;
}
