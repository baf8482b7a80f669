import { figureText, signedText } from './figure-text.ts';
import { BETWEEN_GROUPS } from './visible-text.ts';

/**
 * A sum of money as `figureText` writes it, in groups of three digits from five digits before the point on:
 * "1484", "128 886". Between groups stands a narrow blank that no line breaks at (ISO 80000-1:2022, 7.3.1,
 * leaves comma and point to the decimal sign); on a terminal it becomes a plain one, see `plainGroups`.
 */
export const sumText = (value: number | null | undefined, decimals?: number): string =>
  grouped(figureText(value, decimals));

/** A difference of money as `signedText` writes it, in groups as of `sumText`. */
export const signedSum = (value: number | null | undefined, decimals?: number): string =>
  grouped(signedText(value, decimals));

/** Text for programs, with no blanks within figures. */
export const withoutGroups = (text: string): string => text.replaceAll(BETWEEN_GROUPS, '');

/** A figure in plain decimals, in groups as of `sumText`. */
export const grouped = (text: string): string =>
  text.replace(/^[+-]?\d{5,}/, (whole) => whole.replaceAll(/\B(?=(?:\d{3})+$)/g, NARROW_BLANK));

const NARROW_BLANK = '\u202f';
