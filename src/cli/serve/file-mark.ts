import { stat } from 'node:fs/promises';

/** A text that is another whenever a file was written, replaced, removed or made. */
export async function fileMark(path: string): Promise<string> {
  try {
    const { ino, size, mtimeNs, ctimeNs } = await stat(path, { bigint: true });
    return [ino, size, mtimeNs, ctimeNs].join(' ');
  } catch (error) {
    return `none: ${(error as NodeJS.ErrnoException).code}`;
  }
}
