/** A text with a true minus sign in place of each hyphen before a figure, where it begins a word. */
export const withMinus = (text: string): string => text.replaceAll(/(?<=^|[\s(])-(?=[\d.])/g, '−');
