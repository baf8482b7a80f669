import { rmSync } from 'node:fs';
import {
  access,
  constants,
  type FileHandle,
  open,
  realpath,
  rename,
  writeFile,
} from 'node:fs/promises';
import { InputProblems } from '../../units/problem.ts';
import { fileTrouble } from './file-trouble.ts';
import { neighbourOf, removeAbandoned, type Writer } from './neighbour.ts';
import { endOf } from './where-it-leads.ts';

/** Does work during which a signal that ends the program first calls `cleanUp`. */
export type Guard = <T>(cleanUp: () => void, work: () => Promise<T>) => Promise<T>;

/** What writing needs of the process. */
export interface Writing {
  readonly guard: Guard;
  readonly writer: Writer;
}

/**
 * Write a file whole or not at all: into a hidden neighbour first, which then takes the name.
 *
 * Whoever reads the path sees the old file or the new one, never a part; after an error or a
 * signal the neighbour is gone, and what a killed process left there goes too. A link is followed,
 * also one to a file that is not there yet; a pipe or device is written to as it is.
 *
 * @throws InputProblems when the path cannot be written, saying why
 */
export async function writeWhole(
  path: string,
  text: string | AsyncIterable<string>,
  writing: Writing,
): Promise<void> {
  try {
    const { target, mode, plain } = await whatStandsThere(path);
    if (!plain) return await writeFile(target, text);
    await removeAbandoned(target, writing.writer);
    await beside(target, writing, async (neighbour) => {
      await fill(await open(neighbour, 'wx'), text, mode);
      await rename(neighbour, target);
    });
  } catch (error) {
    throw error instanceof InputProblems ? error : await fileTrouble(error, path, 'write');
  }
}

/**
 * Refuse a path that could not be written, before the work of making what goes there: a neighbour is
 * made and removed again.
 *
 * @throws InputProblems as `writeWhole`
 */
export async function requireWritable(path: string, writing: Writing): Promise<void> {
  try {
    const { target, plain } = await whatStandsThere(path);
    if (!plain) return await access(target, constants.W_OK);
    await beside(target, writing, async (neighbour) => {
      await (await open(neighbour, 'wx')).close();
    });
  } catch (error) {
    throw await fileTrouble(error, path, 'write');
  }
}

/** Do something with a neighbour of a file, which is gone afterwards whatever happens. */
async function beside(
  target: string,
  { guard, writer }: Writing,
  work: (neighbour: string) => Promise<void>,
): Promise<void> {
  const neighbour = neighbourOf(target, writer);
  const remove = () => rmSync(neighbour, { force: true });
  await guard(remove, async () => {
    try {
      await work(neighbour);
    } finally {
      remove();
    }
  });
}

/** Where the text goes in the end, whose permissions it keeps, and whether that is a plain file. */
async function whatStandsThere(path: string) {
  if (/[/\\]$|^$/.test(path)) throw Object.assign(new Error(path), { code: 'EISDIR' });
  const { path: end, found } = await endOf(path);
  if (found === null) return { target: end, mode: null, plain: true };
  if (found.isDirectory()) throw Object.assign(new Error(path), { code: 'EISDIR' });
  const target = found.isFile() ? await realpath(end).catch(() => null) : null;
  if (target === null) return { target: end, mode: null, plain: false }; // also a file without a name
  await (await open(target, 'r+')).close(); // a rename would override write protection
  return { target, mode: Number(found.mode) & PERMISSIONS, plain: true };
}

async function fill(
  handle: FileHandle,
  text: string | AsyncIterable<string>,
  mode: number | null,
): Promise<void> {
  try {
    if (mode !== null) await handle.chmod(mode);
    await writeFile(handle, text);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

const PERMISSIONS = 0o777;
