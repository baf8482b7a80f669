/** The words of the call do not fit what they are about. */
export class UsageError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'UsageError';
  }
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
