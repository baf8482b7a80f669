import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';
import { andList } from '../../units/word-list.ts';

/** Things that are bought, in words: "dehumidifier", "valves and sensors", "2 × purifier". */
export function thingWords(purchases: readonly Pick<Purchase, 'what'>[]): string {
  const counts = new Map<string, number>();
  for (const { what } of purchases) counts.set(what, (counts.get(what) ?? 0) + 1);
  return andList([...counts].map(([what, count]) => (count === 1 ? what : `${count} × ${what}`)));
}

/**
 * Whether what is bought is "them" rather than "it": several purchases, or one whose name is a plural.
 *
 * A name is judged as English, by its words before what is said of it ("heaters for two rooms"): one
 * thing after "a", "an" or "one", several where it begins with a higher number in letters, joins two
 * things or ends in s. Names in other languages are mostly taken for one thing.
 */
export function areSeveral(purchases: readonly Pick<Purchase, 'what'>[]): boolean {
  if (purchases.length !== 1) return purchases.length > 1;
  const [head = ''] = purchases[0]!.what.toLowerCase().split(SAID_OF_IT);
  const words = head.split(/\s+/).filter((word) => word !== '');
  const [first = '', last = ''] = [words[0], words.at(-1)];
  if (ONE.has(first)) return false;
  if (NUMBERS.has(first) || MULTIPLE.test(head)) return true;
  if (words.some((word) => JOINS.has(word))) return true;
  return /[^sui']s$/.test(last) && !ENDS_IN_S.has(last);
}

/** Where the thing ends and what is said of it begins. */
const SAID_OF_IT = /[,;:(]|\s(?:for|in|of|with|without|from|on|to|at|by)\s/;
const ONE = new Set(['a', 'an', 'one', '1']);
const NUMBERS = new Set([
  ...['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'],
  ...['both', 'several'],
]);
const JOINS = new Set(['and', '&', '+']);
/** "2 x", "3×" */
const MULTIPLE = /^\s*(?:[2-9]|\d{2,})\s*[x×]/;
const ENDS_IN_S = new Set(['gas', 'lens', 'canvas', 'series']);
