import type { Io } from '../../src/cli/io.ts';
import { InputProblems } from '../../src/units/problem.ts';

/** A world without disk: files in an object, and what was said. */
export function fakeIo(files: Record<string, string> = {}) {
  const said = { out: '', err: '' };
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
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    width: 80,
    terminal: null,
  };
  return { io, said, files };
}
