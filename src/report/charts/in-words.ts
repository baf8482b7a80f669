import { figureText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';
import { shortenedApart } from '../shortened.ts';

/** Something with a name and a figure, such as a plan and its hours. */
export interface Named {
  readonly name: string;
  readonly value: number;
}

/** All whose printed figure is the least (side -1) or the most (side 1). */
export function extremes(list: readonly Named[], side: -1 | 1, decimals: number): readonly Named[] {
  const printed = (one: Named) => Number(figureText(one.value, decimals));
  const edge = Math.max(...list.map((one) => side * printed(one)));
  return list.filter((one) => side * printed(one) === edge);
}

/**
 * "12 h under a, 0 h under b" by the printed figures, the most first; "12 h" for one alone, "12 h under
 * every plan" where all are the same. Of many that are alike one is named, and long names are cut.
 *
 * @param of  what the first figure is a part of, such as " of 168"
 */
export function mostAndLeast(
  list: readonly Named[],
  unit: string,
  { of = '', decimals = 0 } = {},
): string {
  const told = (value: number | undefined) => `${figureText(value, decimals)}${of}${unit}`;
  const highest = extremes(list, 1, decimals);
  const lowest = extremes(list, -1, decimals);
  if (list.length === 1) return told(list[0]!.value);
  if (highest.length === list.length) return `${told(highest[0]?.value)} under every plan`;
  const whole = list.map(({ name }) => name);
  const cut = shortenedApart(whole, LONGEST);
  const names = (some: readonly Named[]) => {
    const all = some.map(({ name }) => cut[whole.indexOf(name)]!);
    return all.length > 2 ? `${all[0]} and ${all.length - 1} more` : andList(all);
  };
  return (
    `${told(highest[0]!.value)} under ${names(highest)}, ` +
    `${figureText(lowest[0]!.value, decimals)}${unit} under ${names(lowest)}`
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

/** Most of a name that a title has room for. [characters] */
const LONGEST = 28;
