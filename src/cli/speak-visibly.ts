import { LONGEST, plainGroups, visibleText, visibleValue } from '../units/visible-text.ts';
import type { Io } from './io.ts';

/**
 * A world on whose terminal nothing that people typed can be mistaken for something else: whatever
 * is printed goes through `visibleText`. What is written into files stays as it is.
 */
export function speakVisibly(io: Io): Io {
  const speaking: Pick<Io, 'out' | 'err'> = {
    out: (text) => io.out(plainGroups(visibleText(text))),
    err: (text) => io.err(plainGroups(visibleText(text))),
  };
  return Object.assign(Object.create(io) as Io, speaking);
}

/** A sentence about the words of a call, in which none of them breaks the line or fills the screen. */
export function withWordsOnOneLine(sentence: string, words: readonly string[]): string {
  return words
    .flatMap((word) => [word, word.slice(word.indexOf('=') + 1)]) // as in --plan=NAME
    .filter((word) => /[\n\t]/.test(word) || word.length > LONGEST)
    .reduce((text, word) => text.replaceAll(word, () => visibleValue(word)), sentence);
}
