import { InputProblems, type Problem } from '../units/problem.ts';

/** Throw what was found, in the order of the file; beyond a hundred only the number of the rest. */
export function throwProblems(problems: readonly Problem[]): void {
  if (problems.length === 0) return;
  const sorted = problems.toSorted((a, b) => a.line - b.line || a.column - b.column);
  if (sorted.length <= MOST) throw new InputProblems(sorted);
  const rest = {
    file: sorted[0]!.file,
    line: 0,
    column: 0,
    where: '',
    expected: 'no more than these',
    got: `${sorted.length - MOST} further problems`,
    hint: '',
  };
  throw new InputProblems([...sorted.slice(0, MOST), rest]);
}

const MOST = 100;
