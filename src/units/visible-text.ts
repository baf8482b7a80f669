/**
 * Text that can be printed anywhere: \uXXXX stands for control characters, marks that turn the
 * direction of writing, odd separators of lines and halves of characters. Line breaks and tabs stay.
 *
 * In JSON these stand inside strings only, where \uXXXX means the same character.
 */
export const visibleText = (text: string): string => text.replaceAll(UNSEEN, codeOf);

/**
 * A single value within a line, such as a path, as `visibleText` shows it: breaks and tabs escaped
 * too, and the middle left out of what is longer than anybody reads.
 */
export function visibleValue(text: string): string {
  if (text.length <= LONGEST) return visibleText(text).replaceAll(/[\n\t]/g, codeOf);
  const left = text.length - 2 * KEPT;
  return visibleValue(`${text.slice(0, KEPT)}[... ${left} characters ...]${text.slice(-KEPT)}`);
}

/** Prose as `visibleText` shows it, breaks and tabs as the blanks they mean. */
export const visibleProse = (text: string): string =>
  visibleText(text.replaceAll(/[\n\r\t]/g, ' '));

/** Text with \uXXXX in place of the marks that turn the direction of writing, and of nothing else. */
export const withoutTurns = (text: string): string => text.replaceAll(/\p{Bidi_Control}/gu, codeOf);

/** Text in which groups of digits, see `sumText`, are held apart by a blank that any keyboard types. */
export const plainGroups = (text: string): string => text.replaceAll(BETWEEN_GROUPS, ' ');

const codeOf = (character: string): string =>
  `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;

const UNSEEN = /(?![\n\t])\p{Cc}|\p{Bidi_Control}|[\p{Zl}\p{Zp}]|\p{Cs}/gu;

/** A narrow blank within a figure. */
export const BETWEEN_GROUPS = /(?<=\d)\u202f(?=\d{3})/g;

/** Most characters of a value in a line; the keys of the largest section take some 600. */
export const LONGEST = 800;
const KEPT = 120;
