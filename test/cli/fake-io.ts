import { createHash } from 'node:crypto';
import { resolve } from 'node:path';
import type { Io } from '../../src/cli/io.ts';
import { InputProblems } from '../../src/units/problem.ts';

/** A world without disk: files in an object, what was said, and what else was done. */
export function fakeIo(files: Record<string, string> = {}) {
  const said = { out: '', err: '' };
  const done = { shown: [] as string[], folders: [] as string[] };
  const io: Io = {
    version: '1.2.3',
    readText: async (path, limit) => {
      const text = files[path];
      if (text !== undefined && text.length <= limit) return text;
      const got = text === undefined ? 'nothing of that name' : 'more';
      throw new InputProblems([
        { file: path, line: 0, column: 0, where: '', expected: 'a file to read', got, hint: '' },
      ]);
    },
    writeWhole: async (path, text) => {
      files[path] = text;
    },
    makeFolder: async (path) => {
      done.folders.push(path);
    },
    sharedName: async (path) => resolve(path),
    outName: async () => null,
    requireWritable: async () => {},
    readAsset: async (name) => `/* ${name} */`,
    show: async (path) => {
      done.shown.push(path);
    },
    startWorkers: null,
    today: () => '2030-01-02',
    loadSha256: async () => (text) => createHash('sha256').update(text, 'utf8').digest('base64'),
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    width: 80,
    terminal: null,
  };
  return { io, said, done, files };
}
