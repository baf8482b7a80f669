import { mkdir } from 'node:fs/promises';
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
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') {
      throw refused(path, 'a folder, or a path where one can be made', 'a file');
    }
    throw await fileTrouble(error, path, 'write');
  }
}
