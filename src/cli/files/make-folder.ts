import { mkdir } from 'node:fs/promises';
import { InputProblems } from '../../units/problem.ts';
import { fileTrouble, refused } from './file-trouble.ts';

/**
 * Make a folder, and those it stands in, where there is none.
 *
 * @throws InputProblems when it cannot be made, saying why
 */
export async function makeFolder(path: string): Promise<void> {
  try {
    await mkdir(path, { recursive: true });
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EEXIST') throw refused(path, EXPECTED, 'a file');
    const trouble = await fileTrouble(error, path, 'write');
    if (!(trouble instanceof InputProblems)) throw trouble;
    throw new InputProblems(
      trouble.problems.map((problem) => ({ ...problem, expected: EXPECTED })),
    );
  }
}

const EXPECTED = 'a folder, or a path where one can be made';
