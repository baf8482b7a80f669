import { nearestName } from '../units/nearest-name.ts';

/** The words of the call do not fit what they are about. */
export class UsageError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'UsageError';
  }
}

/**
 * Refuse a name that is not among those known, with the nearest that is.
 *
 * @param kind  what it names, e.g. "plan"
 * @throws UsageError
 */
export function requireName(name: string, known: readonly string[], kind: string): void {
  if (known.includes(name)) return;
  const near = nearestName(name, known);
  const hint = near === null ? '' : `\n(Did you mean ${near}?)`;
  throw new UsageError(`error: unknown ${kind} '${name}', known are ${known.join(', ')}${hint}`);
}

/**
 * Do two pieces of work and, where they refuse the call, refuse it with the words of both.
 *
 * @throws UsageError
 */
export function both<A, B>(first: () => A, second: () => B): [A, B] {
  const refusals: string[] = [];
  const tried = <T>(work: () => T): T | undefined => {
    try {
      return work();
    } catch (error) {
      if (!(error instanceof UsageError)) throw error;
      refusals.push(error.message);
      return undefined;
    }
  };
  const results = [tried(first), tried(second)];
  if (refusals.length > 0) throw new UsageError(refusals.join('\n'));
  return results as [A, B];
}
