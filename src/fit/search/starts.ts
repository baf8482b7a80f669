import { seededRandom } from '../../units/seeded-random.ts';

/** Places to search from: the prior's centre, then others within a standard deviation, always the same. */
export function startsOf(parameters: number, count: number): number[][] {
  const random = seededRandom(SEED);
  return Array.from({ length: count }, (_, k) =>
    Array.from({ length: parameters }, () => (k === 0 ? 0 : 2 * random() - 1)),
  );
}

const SEED = 1;
