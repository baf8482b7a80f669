import { InputProblems } from '../../units/problem.ts';
import type { Io } from '../io.ts';

/** Refuse to write where a file is already. @throws InputProblems */
export async function requireFree(io: Io, path: string): Promise<void> {
  if (!(await io.exists(path))) return;
  const expected = 'the name of a file that is not there yet';
  const hint = 'nothing is ever written over it: name another, or move it away';
  const problem = { file: path, line: 0, column: 0, where: '', expected, got: 'one that is', hint };
  throw new InputProblems([problem]);
}
