import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import type { Io } from './io.ts';
import { makeFolder } from './make-folder.ts';
import { readText } from './read-text.ts';
import { type Guard, requireWritable, writeWhole } from './write-whole.ts';

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
    makeFolder,
    requireWritable,
    readAsset: (name) => readFile(new URL(`../${name}`, import.meta.url), 'utf8'),
    show: async (path) => {
      const { default: open } = await import('open');
      await open(path);
    },
    startWorkers: async (setup) => (await import('./start-workers.ts')).startWorkers(setup),
    today: () => new Date().toISOString().slice(0, 10),
    sha256: (text) => createHash('sha256').update(text, 'utf8').digest('base64'),
    out: (text) => void streams.stdout.write(text),
    err: (text) => void streams.stderr.write(text),
    width: Math.max(LEAST_WIDTH, streams.stdout.columns ?? LEAST_WIDTH),
    terminal: streams.stderr.isTTY === true ? streams.stderr : null,
  };
}

/** Tables need this much, and files and pipes get no more, so that they are the same everywhere. */
const LEAST_WIDTH = 80;
