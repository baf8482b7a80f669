import type { Io } from './io.ts';
import { readText } from './read-text.ts';
import { type Guard, writeWhole } from './write-whole.ts';

/** The real world: the disk, and the streams of a process. */
export function nodeIo(
  version: string,
  streams: { readonly stdout: NodeJS.WriteStream; readonly stderr: NodeJS.WriteStream },
  guard: Guard,
): Io {
  return {
    version,
    readText,
    writeWhole: (path, text) => writeWhole(path, text, guard),
    out: (text) => void streams.stdout.write(text),
    err: (text) => void streams.stderr.write(text),
    width: Math.max(LEAST_WIDTH, streams.stdout.columns ?? LEAST_WIDTH),
    terminal: streams.stderr.isTTY === true ? streams.stderr : null,
  };
}

/** Tables need this much, and files and pipes get no more, so that they are the same everywhere. */
const LEAST_WIDTH = 80;
