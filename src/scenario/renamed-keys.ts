/**
 * The name that a key of the scenario bears today, for one that it bore before.
 *
 * @param known  keys that are legal where it stands
 * @returns null for a key that never was one, or that belongs elsewhere
 */
export function renamedKey(key: string, known: readonly string[]): string | null {
  const now = RENAMED_KEYS.get(key);
  return now !== undefined && known.includes(now) ? now : null;
}

/** Old names of keys, and new ones. */
export const RENAMED_KEYS: ReadonlyMap<string, string> = new Map([
  // plans
  ['says', 'description'],
  ['on', 'based on'],
  ['buys', 'purchases'],
  // openings, people
  ['wide', 'open share'],
  ['stays', 'schedule'],
  // rules and conditions, by the vocabulary of alarm management: IEC 62682:2014
  ['for', 'on delay'],
  ['then', 'response'],
  ['above', 'over'],
  ['below', 'under'],
]);
