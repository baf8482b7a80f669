import { firstOf, InputProblems, type Problem } from '../units/problem.ts';

/** Throw what was found, in the order of the file; beyond a hundred only the number of the rest. */
export function throwProblems(problems: readonly Problem[]): void {
  if (problems.length === 0) return;
  const sorted = problems.toSorted((a, b) => a.line - b.line || a.column - b.column);
  throw new InputProblems(firstOf(sorted, MOST));
}

const MOST = 100;
