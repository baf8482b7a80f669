import { withoutTurns } from '../units/visible-text.ts';

/** Text as it stands in markup, within an element or an attribute's double quotes. */
export const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

/**
 * Text for a page: blanks for control characters, halves of characters and the two that are none,
 * because XML has no place for them; \uXXXX for marks that would turn the direction of what follows.
 */
export const printable = (text: string): string =>
  withoutTurns(text).replaceAll(/[^\P{Cc}\n\t]|\p{Cs}|[\uFFFE\uFFFF]/gu, ' ');
