import { createHash } from 'node:crypto';
import { resolve } from 'node:path';
import type { LineFile } from '../../src/cli/files/line-file.ts';
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
      let whole = '';
      for await (const piece of typeof text === 'string' ? [text] : text) whole += piece;
      files[path] = whole;
    },
    openLines: async (path, how) => fakeLines(files, path, how),
    makeFolder: async (path) => {
      done.folders.push(path);
    },
    sharedName: async (path) => resolve(path),
    outName: async () => null,
    requireWritable: async () => {},
    listFolder: async (path) =>
      Object.keys(files).flatMap((file) => {
        if (path === '.') return file.includes('/') ? [] : [file];
        return file.startsWith(`${path}/`) ? [file.slice(path.length + 1)] : [];
      }),
    remove: async (path) => {
      delete files[path];
    },
    packageFolder: async () => 'package',
    exists: async (path) => files[path] !== undefined,
    get: async (address) => {
      throw new Error(`nothing may be fetched: ${address}`);
    },
    cacheFolder: async () => 'cache',
    asking: async () => null,
    readAsset: async (name) => `/* ${name} */`,
    show: async (path) => {
      done.shown.push(path);
    },
    openSite: async () => {
      throw new Error('no site may be opened');
    },
    randomToken: async () => 'token',
    fileMark: async (path) => files[path] ?? 'none',
    pause: () => new Promise((done) => setTimeout(done, 2)),
    untilEnded: () => new Promise(() => {}),
    self: async () => ({ host: 'ab', pid: 1, isRunning: () => false }),
    startWorkers: async () => null,
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

/** A file of lines among the others. */
function fakeLines(files: Record<string, string>, path: string, how: string): LineFile {
  if (how === 'read' && files[path] === undefined) {
    const found = { expected: 'a file to read', got: 'nothing of that name', hint: '' };
    throw new InputProblems([{ file: path, line: 0, column: 0, where: '', ...found }]);
  }
  files[path] ??= '';
  const text = () => Buffer.from(files[path]!);
  return {
    scan: async (each) => {
      const lines = files[path]!.split('\n');
      const rest = lines.pop()!;
      let at = 0;
      for (const line of lines) {
        const length = Buffer.byteLength(line);
        each(line, { at, length });
        at += length + 1;
      }
      return rest;
    },
    read: async ({ at, length }) => text().toString('utf8', at, at + length),
    dropRest: async () => {
      files[path] = files[path]!.replace(/[^\n]*$/, '');
    },
    append: async (line) => {
      const at = text().length;
      files[path] += `${line}\n`;
      return { at, length: Buffer.byteLength(line) };
    },
    close: async () => {},
    remove: async () => {
      delete files[path];
    },
  };
}
