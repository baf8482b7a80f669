/**
 * Of what a scenario states, what a fitted value may stand for: air trades with heat and with water, which
 * both leave by it, but heat and water do not with each other.
 *
 * @param name    of a parameter, such as "moisture buffer"
 * @param stated  each in words that begin with its name
 */
export function mayStandFor(name: string, stated: readonly string[]): string[] {
  const own = kindOf(name);
  return stated.filter((one) => {
    const other = kindOf(one);
    return own === 'air' || other === 'air' || own === other;
  });
}

/** Whether words are of how fast heat goes through a part of the building. */
export const isUValue = (words: string): boolean => /\bU-value\b/.test(words);

/** Whether a parameter is how leaky a home is. */
export const isLeakage = (name: string): boolean => LEAKS.some((part) => name.startsWith(part));

function kindOf(name: string): 'air' | 'water' | 'breath' | 'heat' {
  if ([...LEAKS, ...WINDOWS].some((part) => name.startsWith(part))) return 'air';
  if (/\bmoisture\b/.test(name)) return 'water';
  return / of a body /.test(name) ? 'breath' : 'heat';
}

const LEAKS = ['air leakage', 'air changes', 'leakage area'];
const WINDOWS = ['windows left open', 'usual airing'];
