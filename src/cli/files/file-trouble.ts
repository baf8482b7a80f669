import { readdir } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';
import { nearestName } from '../../units/nearest-name.ts';
import { InputProblems } from '../../units/problem.ts';

/**
 * What the system said about a path, in words.
 *
 * @param error  as node threw it
 * @param path   as the person wrote it
 * @returns InputProblems to throw, or the error itself where it is not about the path
 */
export async function fileTrouble(
  error: unknown,
  path: string,
  wish: 'read' | 'write',
): Promise<unknown> {
  const { code = '', syscall } = (error ?? {}) as NodeJS.ErrnoException;
  const unusual = syscall === undefined ? undefined : `one that the system refuses with ${code}`;
  const got = GOT[wish][code] ?? unusual;
  if (got === undefined) return error;
  if (code !== 'ENOENT') return refused(path, EXPECTED[wish], got);
  const folder = dirname(path);
  const names = await readdir(folder).catch(() => null);
  if (wish === 'write' && names !== null) {
    return refused(path, EXPECTED.write, 'a folder in which none can be made'); // such as /proc
  }
  const hint = wish === 'write' ? `make the folder ${folder} first` : nearby(path, names);
  return refused(path, EXPECTED[wish], got, hint);
}

/** InputProblems about a file as a whole. */
export function refused(file: string, expected: string, got: string, hint = ''): InputProblems {
  return new InputProblems([{ file, line: 0, column: 0, where: '', expected, got, hint }]);
}

/** A next step for a path that is not there: a similar name in its folder, its ending apart, which many share. */
function nearby(path: string, names: readonly string[] | null): string {
  if (names === null) return `there is no folder ${dirname(path)} either`;
  const stem = (name: string): string => basename(name, extname(name));
  const alike = names.filter((name) => nearestName(stem(path), [stem(name)]) !== null);
  const name = nearestName(basename(path), alike.toSorted());
  return name === null ? '' : `did you mean ${join(dirname(path), name)}?`;
}

const EXPECTED = { read: 'a file to read', write: 'a file that can be written' };

const GOT: Record<'read' | 'write', Record<string, string>> = {
  read: {
    ENOENT: 'nothing of that name',
    ENOTDIR: 'nothing of that name',
    EISDIR: 'a folder',
    EACCES: 'one that you may not read',
    EPERM: 'one that you may not read',
    ENAMETOOLONG: 'a name that is too long',
    ELOOP: 'links that lead in a circle',
    ERR_INVALID_ARG_VALUE: 'a name with a null character',
  },
  write: {
    ENOENT: 'a path whose folder does not exist',
    ENOTDIR: 'a path that leads through a file',
    EISDIR: 'a folder',
    EACCES: 'a place where you may not write',
    EPERM: 'a place where you may not write',
    EROFS: 'a disk that can only be read',
    ENOSPC: 'a full disk',
    EDQUOT: 'a full disk',
    ENAMETOOLONG: 'a name that is too long',
    ELOOP: 'links that lead in a circle',
    EPIPE: 'a pipe that nobody reads any more',
    ERR_INVALID_ARG_VALUE: 'a name with a null character',
  },
};
