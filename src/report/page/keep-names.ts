import { escaped, printable } from '../escaped.ts';
import { changeText } from './change-text.ts';
import type { Html } from './html.ts';

/**
 * Markup in which names with hyphens, as plans have them, are marked as one word (`.name`), so that lines
 * break around them; those that a phone has no room for (`.lengthy`) break there, and longer ones anywhere,
 * at their hyphens. Drawings, and lists to choose from, take no marks.
 */
export function keepNames(page: Html, names: readonly string[]): Html {
  const kept = new Map(
    names
      .filter((name) => name.includes('-') && name.length <= LONGEST)
      .sort((a, b) => b.length - a.length)
      .map((name) => [escaped(printable(name)), name.length > SHORT ? 'name lengthy' : 'name']),
  );
  if (kept.size === 0) return page;
  const any = [...kept.keys()].map((name) => name.replaceAll(SIGNS, String.raw`\$&`)).join('|');
  const found = new RegExp(String.raw`(?<![\p{L}\p{N}_-])(?:${any})(?![\p{L}\p{N}_-])`, 'gu');
  const marked = (name: string): string => `<span class="${kept.get(name)}">${name}</span>`;
  return changeText(page, (text) => text.replaceAll(found, marked));
}

/** What means something else in a pattern. */
const SIGNS = /[\\^$.*+?()[\]{}|]/g;
/** Most that a line of a phone, or a column of its tables, has room for. [characters] */
const SHORT = 18;
/** Most that a column of a wide page has room for. [characters] */
const LONGEST = 24;
