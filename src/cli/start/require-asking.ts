import type { Asking } from '../asking.ts';
import type { Io } from '../io.ts';
import { UsageError } from '../usage-error.ts';

/** A way to ask the person. @throws UsageError where there is none, saying what to do instead */
export async function requireAsking(io: Io): Promise<Asking> {
  const asking = await io.asking();
  if (asking !== null) return asking;
  throw new UsageError(
    'error: there is no terminal with a keyboard to ask at.\n' +
      'Give --yes for the usual answers, or --answers FILE with your own.',
  );
}
