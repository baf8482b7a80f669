import type { HomeFit } from '../../fit/fit-home.ts';
import { andList } from '../../units/word-list.ts';

/**
 * On what the ranges of a fit rest that it did not look for, in a sentence; null where nothing is stated, and
 * where no range is told, as none is of a fit that is not reliable.
 */
export function rangesRestOn({ stages, stated, reliable }: HomeFit): string | null {
  const parameters = stages.flatMap(({ fit }) => fit.parameters);
  const isTold = reliable && parameters.some(({ told }) => told === 'yes');
  if (!isTold || stated.length === 0) return null;
  const leaks = parameters.find(
    ({ adjustable: { kind }, told }) => told !== 'no' && LEAKS.has(kind),
  );
  const walls = stated.filter(({ kind }) => kind === 'U-value');
  const more =
    leaks === undefined || walls.length === 0
      ? ''
      : `, and ${leaks.adjustable.name} would come out otherwise with another ${andList(walls.map(({ name }) => name))}`;
  return `Ranges hold as far as what the scenario states is so: ${andList(stated.map(({ words }) => words))}. It was not looked for${more}; put it under "doubts" where it is not certain.`;
}

const LEAKS: ReadonlySet<string> = new Set(['leakage at 50 Pa', 'leakage']);
