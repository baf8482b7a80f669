import {
  closeSync,
  fstatSync,
  ftruncateSync,
  openSync,
  readSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { InputProblems } from '../../units/problem.ts';
import { fileTrouble, refused } from './file-trouble.ts';

/** Where a line stands in a file, without its end. [byte] */
export interface LinePlace {
  readonly at: number;
  readonly length: number;
}

/**
 * A file of lines that is read line by line, or grows by a line at a time while a long task runs: it
 * may be larger than the memory, and a program that is ended loses no line that was added.
 *
 * Whatever goes wrong with the path is thrown as InputProblems.
 */
export interface LineFile {
  /** Show every whole line. Returns what stands behind the last line end, usually nothing. */
  scan(each: (line: string, place: LinePlace) => void): Promise<string>;
  read(place: LinePlace): Promise<string>;
  /** Cut off what stands behind the last line that `scan` showed. */
  dropRest(): Promise<void>;
  append(line: string): Promise<LinePlace>;
  close(): Promise<void>;
  /** Close it and take it away. */
  remove(): Promise<void>;
}

/** @param how  to read one; to make one where there is none; or to go on with one, made where there is none */
export async function openLineFile(path: string, how: 'read' | 'new' | 'go on'): Promise<LineFile> {
  const wish = how === 'read' ? 'read' : 'write';
  async function tried<T>(work: () => T): Promise<T> {
    try {
      return work();
    } catch (error) {
      throw error instanceof InputProblems ? error : await fileTrouble(error, path, wish);
    }
  }
  const handle = await tried(() => opened(path, how));
  let end = 0; // of the last whole line
  const textAt = ({ at, length }: LinePlace): string => {
    const bytes = Buffer.alloc(length);
    for (let k = 0; k < length; ) {
      const read = readSync(handle, bytes, k, length - k, at + k);
      if (read === 0) break;
      k += read;
    }
    return bytes.toString('utf8');
  };

  return {
    scan: (each) =>
      tried(() => {
        end = 0;
        let rest = Buffer.alloc(0);
        const size = fstatSync(handle).size;
        for (let at = 0; at < size; ) {
          const piece = Buffer.alloc(Math.min(PIECE, size - at));
          const read = readSync(handle, piece, 0, piece.length, at);
          if (read === 0) break;
          at += read;
          rest = Buffer.concat([rest, piece.subarray(0, read)]);
          let from = 0;
          for (let to = rest.indexOf(10); to >= 0; to = rest.indexOf(10, from)) {
            each(rest.toString('utf8', from, to), { at: end, length: to - from });
            end += to - from + 1;
            from = to + 1;
          }
          rest = rest.subarray(from);
        }
        return rest.toString('utf8');
      }),
    read: (place) => tried(() => textAt(place)),
    dropRest: () => tried(() => ftruncateSync(handle, end)),
    append: (line) =>
      tried(() => {
        const bytes = Buffer.from(`${line}\n`);
        for (let k = 0; k < bytes.length; ) {
          k += writeSync(handle, bytes, k, bytes.length - k, end + k);
        }
        const place = { at: end, length: bytes.length - 1 };
        end += bytes.length;
        return place;
      }),
    close: async () => closeSync(handle),
    remove: async () => {
      closeSync(handle);
      rmSync(path, { force: true });
    },
  };
}

function opened(path: string, how: keyof typeof FLAGS): number {
  try {
    return openSync(path, FLAGS[how]);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (how === 'go on' && code === 'ENOENT') return openSync(path, FLAGS.new);
    if (code !== 'EEXIST') throw error;
    const hint = '--resume goes on with it; remove it to begin anew';
    throw refused(path, 'no such file yet', 'what an earlier call left unfinished', hint);
  }
}

const FLAGS = { read: 'r', new: 'wx+', 'go on': 'r+' };
const PIECE = 1 << 20; // [byte]
