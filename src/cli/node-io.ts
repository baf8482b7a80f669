import type { Io } from './io.ts';
import type { Guard } from './write-whole.ts';

/** The real world: the disk, and the streams of a process. Whatever is not asked for is not loaded. */
export function nodeIo(
  version: string,
  streams: { readonly stdout: NodeJS.WriteStream; readonly stderr: NodeJS.WriteStream },
  guard: Guard,
): Io {
  return {
    version,
    readText: async (path, limit) => (await import('./read-text.ts')).readText(path, limit),
    writeWhole: async (path, text) =>
      (await import('./write-whole.ts')).writeWhole(path, text, guard),
    makeFolder: async (path) => (await import('./make-folder.ts')).makeFolder(path),
    requireWritable: async (path) => (await import('./write-whole.ts')).requireWritable(path),
    readAsset: async (name) => {
      const { readFile } = await import('node:fs/promises');
      return readFile(new URL(`../${name}`, import.meta.url), 'utf8');
    },
    show: async (path) => {
      const { default: open } = await import('open');
      await open(path);
    },
    startWorkers: async (setup) => (await import('./start-workers.ts')).startWorkers(setup),
    today: () => new Date().toISOString().slice(0, 10),
    loadSha256: async () => {
      const { createHash } = await import('node:crypto');
      return (text) => createHash('sha256').update(text, 'utf8').digest('base64');
    },
    out: (text) => void streams.stdout.write(text),
    err: (text) => void streams.stderr.write(text),
    width: Math.max(LEAST_WIDTH, streams.stdout.columns ?? LEAST_WIDTH),
    terminal: streams.stderr.isTTY === true ? streams.stderr : null,
  };
}

/** Tables need this much, and files and pipes get no more, so that they are the same everywhere. */
const LEAST_WIDTH = 80;
