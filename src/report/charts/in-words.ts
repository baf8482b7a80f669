import { figureText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';

/** Something with a name and a figure, such as a plan and its hours. */
export interface Named {
  readonly name: string;
  readonly value: number;
}

/** All whose printed figure is the least (side -1) or the most (side 1). */
export function extremes(list: readonly Named[], side: -1 | 1, decimals = 0): readonly Named[] {
  const printed = (one: Named) => Number(figureText(one.value, decimals));
  const edge = Math.max(...list.map((one) => side * printed(one)));
  return list.filter((one) => side * printed(one) === edge);
}

/**
 * "most under a (12 h), least under b (0 h)" by the printed figures; "12 h" for one alone, "12 h
 * under every plan" where all are the same.
 */
export function mostAndLeast(
  list: readonly Named[],
  unit: string,
  { most = 'most', least = 'least', decimals = 0 } = {},
): string {
  const told = (value: number | undefined) => `${figureText(value, decimals)}${unit}`;
  const highest = extremes(list, 1, decimals);
  const lowest = extremes(list, -1, decimals);
  if (list.length === 1) return told(list[0]!.value);
  if (highest.length === list.length) return `${told(highest[0]?.value)} under every plan`;
  const names = (some: readonly Named[]) =>
    some.length > 3 ? `${some.length} plans` : andList(some.map(({ name }) => name));
  return (
    `${most} under ${names(highest)} (${told(highest[0]!.value)}), ` +
    `${least} under ${names(lowest)} (${told(lowest[0]!.value)})`
  );
}

/** "9 January 2023" of a reading of the wall clock. [s local] */
export function dateText(local: number, year = true): string {
  const date = new Date(local * 1000);
  const day = `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()]}`;
  return year ? `${day} ${date.getUTCFullYear()}` : day;
}

export const MONTHS = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July'],
  ...['August', 'September', 'October', 'November', 'December'],
];
