import { seededRandom } from '../../units/seeded-random.ts';

/** Places to search from besides the first, within a standard deviation of the prior's centre, always the same. */
export function startsOf(parameters: number, count: number): number[][] {
  const random = seededRandom(SEED);
  return Array.from({ length: count }, () =>
    Array.from({ length: parameters }, () => 2 * random() - 1),
  );
}

const SEED = 1;
