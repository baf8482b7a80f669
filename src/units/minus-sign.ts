import { signedSum } from '../units/sum-text.ts';

/** A text with a true minus sign in place of each hyphen before a figure, where it begins a word. */
export const withMinus = (text: string): string => text.replaceAll(/(?<=^|[\s(])-(?=[\d.])/g, '−');

/** A change as a figure with its sign, a plus or a true minus. */
export const signedWithMinus = (value: number, decimals: number): string =>
  withMinus(signedSum(value, decimals));
