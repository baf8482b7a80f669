import { nearestName } from '../units/nearest-name.ts';

/** The words of the call do not fit what they are about. */
export class WrongCall extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'WrongCall';
  }
}

/**
 * Refuse a name that is not among those known, with the nearest that is.
 *
 * @param kind  what it names, e.g. "plan"
 * @throws WrongCall
 */
export function requireName(name: string, known: readonly string[], kind: string): void {
  if (known.includes(name)) return;
  const near = nearestName(name, known);
  const hint = near === null ? '' : `\n(Did you mean ${near}?)`;
  throw new WrongCall(`error: unknown ${kind} '${name}', known are ${known.join(', ')}${hint}`);
}
