import { randomBytes } from 'node:crypto';
import { constants, rmSync } from 'node:fs';
import { access, type FileHandle, open, realpath, rename, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { InputProblems } from '../units/problem.ts';
import { fileTrouble } from './file-trouble.ts';

/** Does work during which a signal that ends the program first calls `cleanUp`. */
export type Guard = <T>(cleanUp: () => void, work: () => Promise<T>) => Promise<T>;

/**
 * Write a file whole or not at all: into a hidden neighbour first, which then takes the name.
 *
 * Whoever reads the path sees the old file or the new one, never a part; after an error or a
 * signal the neighbour is gone. A link is followed; a pipe or device is written to as it is.
 *
 * @throws InputProblems when the path cannot be written, saying why
 */
export async function writeWhole(path: string, text: string, guard: Guard): Promise<void> {
  try {
    const { target, mode, plain } = await whatStandsThere(path);
    if (!plain) return await writeFile(target, text);
    const beside = join(
      dirname(target),
      `.${basename(target)}.${randomBytes(4).toString('hex')}.tmp`,
    );
    const remove = () => rmSync(beside, { force: true });
    await guard(remove, async () => {
      try {
        await fill(await open(beside, 'wx', mode), text);
        await rename(beside, target);
      } finally {
        remove();
      }
    });
  } catch (error) {
    throw error instanceof InputProblems ? error : await fileTrouble(error, path, 'write');
  }
}

/**
 * Refuse a path that could not be written, before the work of making what goes there.
 *
 * @throws InputProblems as `writeWhole`
 */
export async function requireWritable(path: string): Promise<void> {
  try {
    const { target, plain } = await whatStandsThere(path);
    if (plain) await access(dirname(target), constants.W_OK);
  } catch (error) {
    throw await fileTrouble(error, path, 'write');
  }
}

/** Where the text goes in the end, with which permissions, and whether that is a plain file. */
async function whatStandsThere(path: string) {
  let target = path;
  try {
    target = await realpath(path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    return { target, mode: NEW_FILE, plain: true };
  }
  const found = await stat(target);
  if (found.isDirectory()) throw Object.assign(new Error(path), { code: 'EISDIR' });
  if (!found.isFile()) return { target, mode: NEW_FILE, plain: false };
  await (await open(target, 'r+')).close(); // a rename would override write protection
  return { target, mode: found.mode & PERMISSIONS, plain: true };
}

async function fill(handle: FileHandle, text: string): Promise<void> {
  try {
    await handle.writeFile(text);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

const NEW_FILE = 0o666;
const PERMISSIONS = 0o777;
