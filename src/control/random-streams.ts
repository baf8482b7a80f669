import { stemOf, stemOfText } from '../units/seeded-draw.ts';

/** What is drawn for: one random stream each, in which things go by their names (`stemsByName`). */
export const STREAM = {
  people: 0x10_0000,
  presence: 0x50_0000,
  airings: 1_000_000_000,
  windowRequests: 1_100_000_000,
  sensors: 1_200_000_000,
} as const;

/**
 * Stem of the draws of each thing in a list: by its name, so that what else the list has, and in which
 * order, changes nothing. Things of one name count from the first.
 */
export function stemsByName(seed: number, purpose: number, names: readonly string[]): Int32Array {
  const stem = stemOf(seed, purpose);
  const met = new Map<string, number>();
  return Int32Array.from(names, (name) => {
    const before = met.get(name) ?? 0;
    met.set(name, before + 1);
    return stemOf(stemOfText(stem, name), before);
  });
}
