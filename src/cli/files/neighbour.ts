import { randomBytes } from 'node:crypto';
import { readdir, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** Who writes, as the names of unfinished files tell it. */
export interface Writer {
  /** Hexadecimal, the same for all processes that share their numbers. */
  readonly host: string;
  readonly pid: number;
  /** Whether a process of this host is still there. */
  isRunning(pid: number): boolean;
}

/**
 * A new hidden name beside a file, under which it is written until it is whole.
 *
 * As long as the file's own name allows: systems take at most 255 bytes, some only 143.
 */
export function neighbourOf(target: string, { host, pid }: Writer): string {
  const random = randomBytes(4).toString('hex');
  return join(dirname(target), `${beginning(target)}${host}-${pid}-${random}.tmp`);
}

/**
 * Remove what processes that were killed left beside a file.
 *
 * Only names of `neighbourOf` whose process has ended, or, of another host, that nobody has touched
 * for a day.
 */
export async function removeAbandoned(target: string, writer: Writer): Promise<void> {
  const folder = dirname(target);
  const names = await readdir(folder).catch(() => []);
  for (const name of names.filter((each) => each.startsWith(beginning(target)))) {
    const [, host, pid] = ENDING.exec(name.slice(beginning(target).length)) ?? [];
    if (host === undefined) continue;
    const path = join(folder, name);
    const over =
      host === writer.host ? !writer.isRunning(Number(pid)) : await isOld(path).catch(() => false);
    if (over) await rm(path, { force: true }).catch(() => {});
  }
}

/** What all names of unfinished files of a target begin with, never half a character. */
function beginning(target: string): string {
  const bytes = Buffer.from(basename(target));
  if (bytes.length <= MOST_KEPT) return `.${basename(target)}.`;
  let end = MOST_KEPT;
  while ((bytes[end]! & 0xc0) === 0x80) end--;
  return `.${bytes.toString('utf8', 0, end)}.`;
}

const isOld = async (path: string): Promise<boolean> =>
  Date.now() - (await stat(path)).mtimeMs > DAY;

const ENDING = /^([0-9a-f]+)-(\d+)-[0-9a-f]{8}\.tmp$/;
const MOST_KEPT = 100; // [byte]
const DAY = 86_400_000; // [ms]
