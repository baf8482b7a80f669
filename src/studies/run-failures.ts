import { InputProblems } from '../units/problem.ts';

/**
 * All that was asked for, in its order. Where some of it fails the first failure is thrown, once the rest has
 * ended: no run is left behind that nobody waits for.
 */
export async function allOf<T>(asked: readonly Promise<T>[]): Promise<T[]> {
  const done = await Promise.allSettled(asked);
  return done.map((one) => {
    if (one.status === 'rejected') throw one.reason;
    return one.value;
  });
}

/** What comes of a run; null where what it asks for is no home. */
export async function ifPossible<T>(run: () => T | Promise<T>): Promise<T | null> {
  try {
    return await run();
  } catch (error) {
    if (error instanceof InputProblems) return null;
    throw error;
  }
}
