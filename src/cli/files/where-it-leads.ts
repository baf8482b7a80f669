import type { BigIntStats } from 'node:fs';
import { lstat, readlink, stat } from 'node:fs/promises';
import { basename, dirname, isAbsolute, join, resolve } from 'node:path';

/** Where a path leads in the end, through every link. */
export interface End {
  /** A path to it that is no dangling link. */
  readonly path: string;
  /** What is there; null for nothing. */
  readonly found: BigIntStats | null;
}

/**
 * Follow a path to its end, also through a link to something that is not there yet.
 *
 * @throws the system's error where there is no telling, such as for links in a circle
 */
export async function endOf(path: string): Promise<End> {
  let end = path;
  for (let links = 0; links <= MOST_LINKS; links++) {
    try {
      return { path: end, found: await stat(end, { bigint: true }) };
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    }
    const to = await readlink(end).catch(() => null);
    if (to === null) return { path: end, found: null };
    end = isAbsolute(to) ? to : join(dirname(end), to);
  }
  throw Object.assign(new Error(path), { code: 'ELOOP' });
}

/**
 * A text that two paths share exactly when what is written to one of them is read from the other.
 *
 * Made of the numbers of device and file, or, for a file that is not there yet, those of its folder
 * and its name.
 */
export async function sharedName(path: string): Promise<string> {
  try {
    const end = await endOf(path);
    if (end.found !== null) return numbered(end.found);
    const folder = await stat(dirname(end.path), { bigint: true });
    return join(numbered(folder), basename(end.path));
  } catch {
    return resolve(path);
  }
}

/** Whether something of that name is there, a dangling link too. */
export const exists = (path: string): Promise<boolean> =>
  lstat(path).then(
    () => true,
    () => false,
  );

/** Device and number of a file, by which the system knows it. */
export const numbered = ({ dev, ino }: Pick<BigIntStats, 'dev' | 'ino'>): string => `${dev}:${ino}`;

const MOST_LINKS = 40; // as Linux
