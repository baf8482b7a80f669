import { type CST, Parser } from 'yaml';

/** A bracket or brace that nothing closes, and what would. */
export interface Unclosed {
  /** Where it stands in the text. */
  readonly offset: number;
  readonly opens: '[' | '{';
  readonly closes: ']' | '}';
}

/**
 * The first bracket or brace of a text that nothing closes, of several around each other the innermost; null
 * where all are closed. YAML reads on behind it and stumbles only later, often at several places.
 */
export function firstUnclosed(text: string): Unclosed | null {
  for (const token of new Parser().parse(text)) {
    const found = unclosedIn(token);
    if (found !== null) return found;
  }
  return null;
}

function unclosedIn(token: CST.Token | null | undefined): Unclosed | null {
  if (token === null || token === undefined) return null;
  if (token.type === 'document') return unclosedIn(token.value);
  if (!('items' in token)) return null;
  for (const item of token.items) {
    const found = unclosedIn('key' in item ? item.key : null) ?? unclosedIn(item.value);
    if (found !== null) return found;
  }
  if (token.type !== 'flow-collection') return null;
  const isList = token.start.type === 'flow-seq-start';
  const end = isList ? 'flow-seq-end' : 'flow-map-end';
  if (token.end.some(({ type }) => type === end)) return null;
  const marks = isList
    ? ({ opens: '[', closes: ']' } as const)
    : ({ opens: '{', closes: '}' } as const);
  return { offset: token.start.offset, ...marks };
}
