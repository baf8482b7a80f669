import { nearestName } from '../../units/nearest-name.ts';
import { visibleValue } from '../../units/visible-text.ts';
import { UsageError } from '../usage-error.ts';

/**
 * Refuse a name that is not among those known, with the nearest that is.
 *
 * @param kind  what it names, e.g. "plan"
 * @throws UsageError
 */
export function requireName(name: string, known: readonly string[], kind: string): void {
  if (known.includes(name)) return;
  const near = nearestName(name, known);
  const hint = near === null ? '' : ` (did you mean ${near}?)`;
  throw new UsageError(
    `error: unknown ${kind} '${visibleValue(name)}'${hint}, known are ${known.join(', ')}`,
  );
}
