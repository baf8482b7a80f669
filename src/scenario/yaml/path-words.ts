import type { Path } from './place-of.ts';

/** "home.doorways #2.between #1": a path as a person counts. */
export function pathWords(path: Path): string {
  let words = '';
  for (const step of path) {
    if (typeof step === 'number') words += ` #${step + 1}`;
    else words += `${words === '' ? '' : '.'}${ODD.test(step) ? JSON.stringify(step) : step}`;
  }
  return words;
}

/** What was written, shortened: `"5 kg"`, `-3`, `a list of 2`, `nothing`. */
export function valueWords(value: unknown): string {
  if (value === undefined || value === null) return 'nothing';
  if (typeof value === 'string') {
    return JSON.stringify(value.length > 60 ? `${value.slice(0, 57)}...` : value);
  }
  if (Array.isArray(value))
    return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (typeof value === 'object') {
    return Object.keys(value).length === 0 ? 'an empty mapping' : 'a mapping';
  }
  return String(value);
}

/** What stands at a path, undefined where nothing does. */
export function valueAt(value: unknown, path: Path): unknown {
  let at = value;
  for (const step of path) {
    if (at === null || typeof at !== 'object') return undefined;
    if (!Object.hasOwn(at, step)) return undefined;
    at = (at as Record<string | number, unknown>)[step];
  }
  return at;
}

const ODD = /^$|\p{Cc}/u; // a key that would not be seen, or would break the line
