import { WHO } from '../choices.ts';
import { type Answers, said } from './question.ts';

/** People of one kind. */
export interface AnsweredPeople {
  readonly who: (typeof WHO)[number];
  readonly number: number;
}

/** The people that were answered. */
export const peopleOf = (answers: Answers): readonly AnsweredPeople[] =>
  peopleIn(said(answers, 'people')) ?? [];

/** Why a line is no list of people, in words; null where it is one. */
export const peopleTrouble = (line: string): string | null =>
  peopleIn(line) === null
    ? 'how many of adults, frail adults, children and infants, such as 2 adults, 1 child'
    : null;

/** People of "2 adults, 1 child"; null where it is none of that, or nobody, or a crowd. */
function peopleIn(line: string): AnsweredPeople[] | null {
  const found: AnsweredPeople[] = [];
  for (const part of line.split(/,|\band\b/)) {
    const [, number, words] = /^\s*(\d+)\s+([a-z ]+?)\s*$/i.exec(part) ?? [];
    const who = WHO.find((one) => one === singular(words ?? ''));
    if (who === undefined || found.some((one) => one.who === who)) return null;
    found.push({ who, number: Number(number) });
  }
  const all = found.reduce((sum, { number }) => sum + number, 0);
  return all >= 1 && all <= 12 ? found.filter(({ number }) => number > 0) : null;
}

const singular = (words: string): string =>
  words
    .toLowerCase()
    .replace(/^children$/, 'child')
    .replace(/s$/, '');
