import { open } from 'node:fs/promises';
import { InputProblems } from '../../units/problem.ts';
import { fileTrouble, refused } from './file-trouble.ts';

/**
 * The whole text of a file, refused before anyone parses it where it cannot be what was meant.
 *
 * @param limit  largest size accepted [byte]
 * @throws InputProblems when it cannot be read, is larger than the limit, or is not UTF-8 text
 */
export async function readText(path: string, limit: number): Promise<string> {
  let bytes: Uint8Array;
  try {
    bytes = await readBytes(path, limit);
  } catch (error) {
    throw error instanceof InputProblems ? error : await fileTrouble(error, path, 'read');
  }
  return textOf(bytes, path);
}

/** Reads in pieces, so that neither a huge file nor an endless device fills the memory. */
async function readBytes(path: string, limit: number): Promise<Uint8Array> {
  const handle = await open(path, 'r');
  try {
    const { size } = await handle.stat();
    if (size > limit) throw tooLarge(path, limit, `${megabytes(size)} MB`);
    const pieces: Uint8Array[] = [];
    let total = 0;
    for (;;) {
      const { bytesRead, buffer } = await handle.read(new Uint8Array(PIECE), 0, PIECE, null);
      if (bytesRead === 0) return Buffer.concat(pieces);
      pieces.push(buffer.subarray(0, bytesRead));
      total += bytesRead;
      if (total > limit) throw tooLarge(path, limit, 'more');
    }
  } finally {
    await handle.close();
  }
}

/** UTF-8 decoded strictly, without byte order mark. */
function textOf(bytes: Uint8Array, path: string): string {
  const [a, b] = bytes;
  if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff)) {
    throw refused(path, 'text in UTF-8', 'text in UTF-16', 'save it as UTF-8');
  }
  if (bytes.includes(0)) throw refused(path, 'a text file', 'a binary file');
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw refused(path, 'text in UTF-8', 'bytes that are not UTF-8', 'save it as UTF-8');
  }
}

function tooLarge(path: string, limit: number, got: string) {
  return refused(path, `a file of at most ${megabytes(limit)} MB`, got);
}

const megabytes = (bytes: number): string => String(Number((bytes / 1e6).toPrecision(3)));
const PIECE = 1 << 16;
