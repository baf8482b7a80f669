import type { HomeFit } from '../../fit/fit-home.ts';
import { andList } from '../../units/word-list.ts';
import { isLeakage, isUValue } from './may-stand-for.ts';

/** On what the ranges of a fit rest that it did not look for, in a sentence; null where nothing is stated. */
export function rangesRestOn({ stages, stated }: HomeFit): string | null {
  if (stated.length === 0) return null;
  const leaks = stages
    .flatMap(({ fit }) => fit.parameters)
    .find(({ adjustable: { name }, told }) => told !== 'no' && isLeakage(name));
  const walls = stated.filter(isUValue);
  const more =
    leaks === undefined || walls.length === 0
      ? ''
      : `, and ${leaks.adjustable.name} would come out otherwise with another ${andList(walls.map(nameOf))}`;
  return `Ranges hold as far as what the scenario states is so: ${andList(stated)}. It was not looked for${more}; put it under "doubts" where it is not certain.`;
}

const nameOf = (words: string): string => words.replace(/ \([^()]*\)$/, '');
